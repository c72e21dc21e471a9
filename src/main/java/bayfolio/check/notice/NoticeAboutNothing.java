package bayfolio.check.notice;

import bayfolio.check.FleetRule;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.Notice;
import bayfolio.model.Whose;
import bayfolio.procedure.Form;
import bayfolio.procedure.Library;
import bayfolio.source.Located;
import java.util.stream.Stream;

/**
 * Flags a notice that names a role which none of its coaches has anything for, or a procedure that is for none of them: it
 * would stand on no page of theirs.
 */
public final class NoticeAboutNothing implements FleetRule {
    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        return Written.all(fleet)
                .filter(written -> !written.ofTheFleet() || fleet.coachesRead())
                .flatMap(written -> Stream.concat(
                        written.each(Notice.ROLES)
                                .filter(role -> !held(role.value(), written, fleet))
                                .flatMap(role -> told(written, role, "role", "held by nothing on")),
                        written.each(Notice.PROCEDURES)
                                .filter(id -> known(id.value(), library)
                                        && written.coaches().stream()
                                                .noneMatch(unit -> library.named(unit, id.value())
                                                        .isPresent()))
                                .flatMap(id -> told(written, id, "procedure", "not for"))));
    }

    private static boolean held(String role, Written written, Fleet fleet) {
        return fleet.siteThings().anyMatch(thing -> thing.roles().contains(role))
                || written.coaches().stream().anyMatch(unit -> unit.holds(role));
    }

    /** One that is not there is told as such. */
    private static boolean known(String procedure, Library library) {
        return Stream.of(Form.PROCEDURE, Form.TROUBLE).anyMatch(form -> library.knows(form, procedure, Whose.ALL));
    }

    private static Stream<Finding> told(Written written, Located<String> named, String kind, String what) {
        String whose = written.ofTheFleet() || written.coaches().size() > 1 ? "any coach" : "this coach";
        return written.told(Finding.warning(
                        "notice-about-nothing",
                        named.at(),
                        "%s `%s`, which %s names, is %s %s"
                                .formatted(kind, named.value(), written.named(), what, whose))
                .mend("Take it out, or name what is meant; what has left the coach needs no notice."));
    }
}
