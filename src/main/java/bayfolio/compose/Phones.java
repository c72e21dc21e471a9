package bayfolio.compose;

import bayfolio.handbook.Content;
import bayfolio.model.Phone;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.List;

/** Whom to call and when, each number ready to be dialed. */
final class Phones {
    private final Draft draft;

    Phones(Draft draft) {
        this.draft = draft;
    }

    Content content() {
        List<List<Inline>> numbers = new ArrayList<>();
        for (Phone phone : draft.coach().fleet().phones()) {
            String number = phone.facts().get(Phone.NUMBER);
            List<Inline> line = new ArrayList<>();
            line.add(new Inline.Link(
                    new Target.OfPhone(phone.facts().get(Phone.ID), number),
                    List.of(new Inline.Text(number)),
                    phone.facts().at()));
            phone.facts().find(Phone.WHEN).ifPresent(when -> line.add(new Inline.Text(" " + when)));
            numbers.add(line);
        }
        return new Content.Text(new Block.Bullets(numbers));
    }
}
