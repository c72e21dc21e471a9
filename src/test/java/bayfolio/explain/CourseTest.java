package bayfolio.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bayfolio.DemoFleet;
import bayfolio.model.Coach;
import bayfolio.model.Unit;
import bayfolio.reckon.Question;
import bayfolio.reckon.battery.ANight;
import bayfolio.reckon.battery.HouseBank;
import bayfolio.reckon.battery.Night;
import bayfolio.reckon.water.WaterUse;
import bayfolio.reckon.water.WaterUseProfile;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is drawn from hour to hour and from day to day agrees with what is told of the end. */
final class CourseTest {
    private interface Looked {
        void at(Coach coach, Course course);
    }

    private static void each(Question question, Looked looked) throws Exception {
        DemoFleet fleet = DemoFleet.of(Path.of(""));
        int seen = 0;
        for (Unit unit : fleet.check().units()) {
            Coach coach = fleet.check().of(unit).coach();
            Optional<Course> course = Explanations.of(
                            coach, fleet.check().of(unit).words())
                    .stream()
                    .filter(it -> it.question() == question)
                    .filter(Explained.Explanation.class::isInstance)
                    .flatMap(it -> ((Explained.Explanation) it).plot().stream())
                    .filter(Course.class::isInstance)
                    .map(Course.class::cast)
                    .findFirst();
            if (course.isPresent()) {
                looked.at(coach, course.get());
                seen++;
            }
        }
        assertThat(seen).isGreaterThanOrEqualTo(4);
    }

    @Test
    void chargeFallsThroughTheNightToWhatIsLeft() throws Exception {
        each(Question.A_NIGHT, (coach, course) -> {
            ANight night = ANight.of(coach).orElseThrow();
            assertThat(course.limit()).isEqualTo(night.night().bank().limit().value());
            assertThat(course.lines()).hasSize(3);
            List<Double> ends = List.of(
                    night.night().at(HouseBank.MILD).left().value(),
                    night.night().at(ANight.FREEZING).left().value(),
                    night.night().at(ANight.HARD_FROST).left().value());
            for (int i = 0; i < 3; i++) {
                List<Course.Point> points = course.lines().get(i).points();
                assertThat(points.get(0)).isEqualTo(new Course.Point(0, 1));
                Course.Point end = points.get(points.size() - 1);
                assertThat(end.at()).isEqualTo(Night.LENGTH.value() / 3600);
                assertThat(end.share()).isCloseTo(ends.get(i), within(1e-9));
                for (int k = 1; k < points.size(); k++) {
                    assertThat(points.get(k).at())
                            .isGreaterThanOrEqualTo(points.get(k - 1).at());
                    assertThat(points.get(k).share())
                            .isLessThanOrEqualTo(points.get(k - 1).share() + 1e-9)
                            .isNotNegative();
                }
            }
        });
    }

    @Test
    void waterFallsAndWasteRisesUntilTheDayThatIsTold() throws Exception {
        each(Question.WATER_DAYS, (coach, course) -> {
            WaterUse use = WaterUse.of(coach).orElseThrow();
            List<WaterUse.Lasting> all = use.lasting(WaterUseProfile.USUAL, Math.min(2, use.berths()));
            for (int i = 0; i < all.size(); i++) {
                List<Course.Point> points = course.lines().get(i).points();
                double end = all.get(i).days();
                boolean empties = all.get(i).end() == WaterUse.End.EMPTY;
                assertThat(points.get(0).share()).isEqualTo(empties ? 1 : 0);
                if (end <= course.span()) {
                    assertThat(points.get(1).at()).isCloseTo(end, within(1e-9));
                    assertThat(points.get(1).share()).isCloseTo(empties ? 0 : 1, within(1e-9));
                }
            }
        });
    }
}
