package bayfolio.procedure;

import bayfolio.catalog.Catalog;
import bayfolio.model.Coach;
import bayfolio.model.Country;
import bayfolio.model.EmergencyNumber;
import bayfolio.model.Phone;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The numbers that bring help where a coach is hired out and where it may be taken, as a sentence names them. */
public record EmergencyNumbers(Coach coach, Catalog screen) {
    /** {@code 999 or 112; in France and Spain 112}: in danger nobody looks up another page. */
    List<Inline> all(Country home, List<Inline> given, Place at) {
        List<Inline> abroad = abroad(home, at);
        List<Inline> all = new ArrayList<>(of(home, abroad.isEmpty() ? given : List.of(), at));
        all.addAll(abroad);
        return all;
    }

    /** {@code ; in France and Spain 112}; nothing where they are those of home. */
    public List<Inline> abroad(Country home, Place at) {
        List<Inline> links = new ArrayList<>();
        byNumbers(home, at).forEach((numbers, countries) -> {
            links.add(new Inline.Text(screen.say("call.abroad", "countries", countries) + " "));
            links.addAll(numbers);
        });
        return links;
    }

    /** What a sentence says without the numbers abroad, where those have been told before. */
    public List<Inline> atHome(List<Inline> text) {
        List<Inline> abroad = coach.country().stream()
                .flatMap(home -> abroad(home, home.facts().at()).stream())
                .toList();
        List<Inline> rest = new ArrayList<>(text);
        for (int i = 0; !abroad.isEmpty() && i + abroad.size() <= rest.size(); i++) {
            List<Inline> part = rest.subList(i, i + abroad.size());
            if (Inline.plain(part).equals(Inline.plain(abroad))) {
                part.clear();
            }
        }
        return rest;
    }

    /** Numbers that are others than those of home, each with the names of its countries. */
    public Map<List<Inline>, String> byNumbers(Country home, Place at) {
        Map<List<Inline>, List<String>> byNumbers = new LinkedHashMap<>();
        coach.abroad()
                .forEach(country -> byNumbers
                        .computeIfAbsent(of(country, List.of(), at), it -> new ArrayList<>())
                        .add(country.name()));
        byNumbers.remove(of(home, List.of(), at));
        Map<List<Inline>, String> named = new LinkedHashMap<>();
        byNumbers.forEach((numbers, countries) -> named.put(numbers, screen.and(countries)));
        return named;
    }

    /** {@code 911}; {@code 999 or 112}; {@code 110 (fire), 112 (police) or 113 (ambulance)}. */
    private List<Inline> of(Country country, List<Inline> given, Place at) {
        List<EmergencyNumber> numbers = country.emergency();
        boolean differ =
                numbers.stream().map(EmergencyNumber::reaches).distinct().count() > 1;
        List<String> separators = screen.separators(numbers.size(), true);
        List<Inline> links = new ArrayList<>();
        for (int i = 0; i < numbers.size(); i++) {
            if (i > 0) {
                links.add(new Inline.Text(separators.get(i)));
            }
            EmergencyNumber each = numbers.get(i);
            // Words given for several cannot tell them apart.
            links.add(new Inline.Link(
                    new Target.OfPhone(Phone.EMERGENCY, each.number()),
                    numbers.size() == 1 && !given.isEmpty() ? given : List.of(new Inline.Text(each.number())),
                    at));
            if (differ) {
                each.reaches().ifPresent(whom -> links.add(new Inline.Text(" (" + whom + ")")));
            }
        }
        return links;
    }
}
