package bayfolio.render.mail;

import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Phone;
import ezvcard.Ezvcard;
import ezvcard.VCard;
import ezvcard.VCardVersion;
import ezvcard.parameter.TelephoneType;
import ezvcard.property.Kind;
import ezvcard.property.Telephone;
import ezvcard.property.Uid;

/**
 * The desk for the address book of a phone: its numbers, each with when it is called.
 *
 * @see <a href="https://www.rfc-editor.org/rfc/rfc6350">RFC 6350</a>
 */
public final class DeskCard {
    public static final String FILE = "desk.vcf";
    public static final String KIND = "text/vcard";

    private DeskCard() {}

    public static String of(Fleet fleet) {
        VCard card = new VCard();
        card.setKind(Kind.org());
        card.setFormattedName(fleet.name());
        card.setOrganization(fleet.name());
        String base = fleet.facts().facts().get(FleetFacts.BASE_ADDRESS);
        card.setUid(new Uid(base));
        card.addUrl(base);
        for (Phone phone : fleet.facts().facts().all(FleetFacts.PHONES)) {
            Telephone number = new Telephone(phone.number());
            number.getTypes().add(TelephoneType.VOICE);
            card.addTelephoneNumber(number);
            phone.facts().find(Phone.WHEN).ifPresent(when -> card.addNote(phone.number() + ": " + when));
        }
        fleet.facts().facts().find(FleetFacts.MAIL).ifPresent(card::addEmail);
        fleet.facts().facts().find(FleetFacts.ADDRESS).ifPresent(where -> card.addNote(where));
        return Ezvcard.write(card).version(VCardVersion.V4_0).prodId(false).go();
    }
}
