package bayfolio.compose;

import bayfolio.document.Content;
import bayfolio.document.Stamp;
import bayfolio.model.EmergencyNumber;
import bayfolio.model.Phone;
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
        view.coach()
                .country()
                .ifPresent(country -> country.emergency().forEach(number -> numbers.add(emergency(number))));
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

    private List<Inline> emergency(EmergencyNumber number) {
        String reached = number.reaches().map(whom -> ": " + whom).orElse("");
        return List.of(
                view.link(new Target.OfPhone(Phone.EMERGENCY, number.number()), number.number()),
                new Inline.Text(" " + view.word("call.emergency") + reached));
    }
}
