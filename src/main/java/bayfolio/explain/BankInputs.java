package bayfolio.explain;

import bayfolio.fact.Key;
import bayfolio.measure.Amount;
import bayfolio.measure.Quantity;
import bayfolio.measure.Rounding;
import bayfolio.measure.Symbol;
import bayfolio.model.Bank;
import bayfolio.reckon.Given;
import bayfolio.reckon.Origin;
import bayfolio.reckon.battery.HouseBank;
import java.util.List;

/** What questions about the house batteries begin with. */
record BankInputs(HouseBank bank, Voice voice) {
    List<Input> basics() {
        return List.of(
                written("capacity", Bank.AMP_HOURS),
                written("voltage", Bank.VOLTS),
                input("usable", voice.shown(bank.usable())));
    }

    List<Input> rating() {
        return List.of(
                input("rated-over", voice.shown(bank.ratedOver())),
                bank.exponent().origin() instanceof Origin.Stated stated
                        ? new Input(said("exponent"), bank.bank().facts().get(Bank.PEUKERT_EXPONENT), stated)
                        : input(
                                "exponent",
                                bank.exponent().map(it -> Amount.of(Rounding.NEAREST.print(it, 2), Symbol.NONE))));
    }

    Input accepts() {
        return input("accepts", voice.shown(bank.accepts()));
    }

    private <Q extends Quantity> Input written(String name, Key<Q> key) {
        return input(name, Voice.written(Given.stated(bank.bank().facts(), key)));
    }

    private Input input(String name, Given<Amount> value) {
        return new Input(said(name), voice.amount(value.value()), value.origin());
    }

    private String said(String name) {
        return voice.words()
                .say(
                        "batteries.input." + name,
                        "name",
                        bank.bank().name(),
                        "inside",
                        Voice.inside(bank.bank().name()));
    }
}
