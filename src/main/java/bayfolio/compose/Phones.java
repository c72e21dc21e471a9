package bayfolio.compose;

import bayfolio.document.Content;
import bayfolio.document.Stamp;
import bayfolio.model.Country;
import bayfolio.model.Phone;
import bayfolio.procedure.EmergencyNumbers;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.List;

/** Whom to call and when, each number ready to be dialed; those of the country first. */
final class Phones {
    private final CoachView view;

    Phones(CoachView view) {
        this.view = view;
    }

    Content content(Stamp stamp) {
        List<List<Inline>> numbers = new ArrayList<>();
        view.coach().country().ifPresent(country -> {
            numbers.addAll(of(country));
            new EmergencyNumbers(view.coach(), view.words())
                    .byNumbers(country, view.unit().facts().at())
                    .forEach((links, countries) -> numbers.add(in(countries, links)));
        });
        for (Phone phone : view.coach().fleet().phones()) {
            String number = phone.facts().get(Phone.NUMBER);
            List<Inline> line = new ArrayList<>();
            line.add(new Inline.Link(
                    new Target.OfPhone(phone.facts().get(Phone.ID), number),
                    List.of(new Inline.Text(number)),
                    phone.facts().at()));
            phone.facts().find(Phone.WHEN).ifPresent(when -> line.add(new Inline.Text(" " + when)));
            numbers.add(line);
        }
        return new Content.Text(stamp, List.of(new Block.Bullets(numbers)));
    }

    /** The emergency numbers of a country, a line each. */
    List<List<Inline>> of(Country country) {
        return country.emergency().stream()
                .map(number -> List.<Inline>of(
                        view.link(new Target.OfPhone(Phone.EMERGENCY, number.number()), number.number()),
                        new Inline.Text(" " + view.word("call.emergency")
                                + number.reaches().map(whom -> ": " + whom).orElse(""))))
                .toList();
    }

    /** Those of other countries in one line. */
    private List<Inline> in(String countries, List<Inline> links) {
        List<Inline> line = new ArrayList<>();
        line.add(new Inline.Text(view.words().say("call.emergency-in", "countries", countries) + " "));
        line.addAll(links);
        return line;
    }
}
