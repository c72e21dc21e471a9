package bayfolio.handbook;

import bayfolio.prose.Target;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where each target is: the only place that links get their addresses from. */
public final class AddressBook {
    private final Map<Target, Address> addresses = new HashMap<>();

    /**
     * @param path of the page within the folder of the coach
     * @param anchor of the section; empty for the page itself
     */
    public record Address(String path, String anchor) {}

    AddressBook(List<Page> pages) {
        for (Page page : pages) {
            add(page.home(), new Address(page.path(), ""));
            for (Section section : page.sections()) {
                section.home().ifPresent(home -> add(home, new Address(page.path(), section.anchor())));
            }
        }
    }

    private void add(Target target, Address address) {
        Address before = addresses.putIfAbsent(target, address);
        if (before != null) {
            throw new IllegalArgumentException(target + " has two homes: " + before + " and " + address);
        }
    }

    /** A phone number has no address here: it is dialed. */
    public Optional<Address> of(Target target) {
        return Optional.ofNullable(addresses.get(target));
    }
}
