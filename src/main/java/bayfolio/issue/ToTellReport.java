package bayfolio.issue;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.List;

/** Who holds an older edition, by the numbers of bookings alone. */
public final class ToTellReport {
    private ToTellReport() {}

    /** A line for each booking with the text for it below, ready to be copied. */
    public static String text(List<ToTell> older) {
        StringBuilder report = new StringBuilder("\n"
                + (older.isEmpty()
                        ? "no booking to come holds an older edition of which renters read something else now\n"
                        : ChangeReport.count(older.size(), "booking") + " to come with an older edition\n"));
        older.forEach(each -> report.append("\nbooking ")
                .append(each.booking().id())
                .append(", pickup ")
                .append(each.booking().pickup().toString().replace('T', ' '))
                .append(", edition ")
                .append(each.edition())
                .append('\n')
                .append(each.text()));
        return report.toString();
    }

    public static JsonArray json(List<ToTell> older) {
        JsonArray all = new JsonArray();
        older.forEach(each -> {
            JsonObject json = new JsonObject();
            json.addProperty("booking", each.booking().id());
            json.addProperty("pickup", each.booking().pickup().toString());
            json.addProperty("edition", each.edition());
            json.addProperty("text", each.text());
            all.add(json);
        });
        return all;
    }
}
