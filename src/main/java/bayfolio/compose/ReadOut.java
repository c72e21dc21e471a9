package bayfolio.compose;

import bayfolio.document.Audience;
import bayfolio.document.Content.FactTable.Row;
import bayfolio.document.From;
import bayfolio.document.Stamp;
import bayfolio.fact.Key;
import bayfolio.model.Cord;
import bayfolio.model.Engine;
import bayfolio.model.Size;
import bayfolio.model.Unit;
import bayfolio.model.Weights;
import bayfolio.reckon.clearance.Clearances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What others ask for by phone, at a pump or before a bridge, as rows to be read out. */
final class ReadOut {
    private final CoachView view;
    private final FactRows rows;

    ReadOut(CoachView view) {
        this.view = view;
        this.rows = new FactRows(view);
    }

    /** What a driver must know before the first bridge: three measures, the lowest sign to drive under, the weight. */
    List<Row> measures(Stamp table) {
        List<Row> all = new ArrayList<>();
        number(table).ifPresent(all::add);
        size(table).forEach(all::add);
        fuel(table).ifPresent(all::add);
        thing(table, "connection", "fuel-filler").ifPresent(all::add);
        thing(table, "supply", "shore").ifPresent(all::add);
        return all;
    }

    /** What a helper on the phone must know: all that, and what the coach is joined to a site with. */
    List<Row> helper(Stamp table) {
        List<Row> all = measures(table);
        view.unit()
                .facts()
                .find(Unit.CORD)
                .ifPresent(cord -> Stream.of(Cord.PLUG, Cord.LENGTH)
                        .forEach(key -> rows.row(table.child("cord"), cord, key)
                                .map(row -> new Row(row.stamp(), view.word("card." + key.name()), row.lines()))
                                .ifPresent(all::add)));
        return all;
    }

    /** What is looked at through the windshield. */
    List<Row> glance(Stamp table) {
        return Stream.of(size(table), fuel(table).stream())
                .flatMap(each -> each)
                .toList();
    }

    private Optional<Row> number(Stamp table) {
        Unit unit = view.unit();
        return unit.facts()
                .find(Unit.NUMBER)
                .map(number -> Row.of(
                        table.child("number").from(From.fact(unit, Unit.NUMBER)),
                        rows.label(Unit.SHAPE, Unit.NUMBER),
                        number));
    }

    private Stream<Row> size(Stamp table) {
        Unit unit = view.unit();
        List<Row> all = new ArrayList<>();
        for (Key<?> key : Size.SHAPE.keys()) {
            if (key == Size.LENGTH || key == Size.HEIGHT || key == Size.WIDTH_MIRRORS) {
                rows.row(table, unit.size(), key).ifPresent(all::add);
            }
        }
        Clearances.lowestSign(view.coach())
                .ifPresent(sign -> all.add(Row.of(
                        table.child("lowest-sign").from(From.fact(unit.size(), Size.HEIGHT)),
                        view.word("home.lowest-sign"),
                        view.words().amount(sign))));
        unit.facts()
                .find(Unit.WEIGHTS)
                .flatMap(weights -> rows.row(table, weights, Weights.GROSS))
                .ifPresent(all::add);
        return all.stream();
    }

    private Optional<Row> fuel(Stamp table) {
        return view.unit().facts().find(Unit.ENGINE).flatMap(engine -> rows.row(table, engine, Engine.FUEL));
    }

    /** What is asked for at a pump or a post: where it is, or what it is called. */
    private Optional<Row> thing(Stamp table, String kind, String role) {
        return view.coach().inRole(kind, role).stream()
                .filter(thing -> CoachView.audience(thing) != Audience.STAFF)
                .findFirst()
                .map(thing -> {
                    String place = view.wording().place(thing);
                    return Row.of(
                            table.child(role).from(From.thing(thing)).in(view.language(thing)),
                            view.word("home." + role),
                            place.isEmpty() ? thing.name() : place);
                });
    }
}
