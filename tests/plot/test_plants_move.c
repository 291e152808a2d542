/* Plants when the plan under them changes: by hand, as the plot's file says it, and at random. */
#include "plot/edit/plants_move.h"
#include "plot/edit/legend.h"
#include "plot/edit/patch.h"
#include "plot/edit/rescale.h"
#include "plot/edit/resize.h"
#include "plot/edit/strip.h"
#include "support/details.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/runner.h"

#include <string.h>

#define CASES runner_count(300, 20000)

static const char *const garden[] = { "bb.cc", "bb.cc", "..p..", NULL };

static void plot_begin(struct plot *plot, const char *lines)
{
	plot_from_rows(plot, garden);
	plot_add_lines(plot, lines);
}

/* What follows the ground, and ends the plot. */
static void check_end(struct plot *plot, const char *expected)
{
	plot_check_later(plot, expected);
	plot_fini(plot);
}

static void mirror_set(struct plot *plot, enum mirror_kind kind)
{
	block_set(&plot->details.head, HEAD_MIRROR,
		(struct value){ .set = true, .as.number = kind });
}

#define ROSE "plant r \"Rose\"\n"

START_TEST(plants_move_where_the_plan_grows_and_go_where_it_is_cropped)
{
	static const char lines[] = ROSE
		"  at 0,0\n  at 4,1\n  drift b front\n  drift 0,1 back\n  drift 3,0 whole\n";
	struct plot plot;

	plot_begin(&plot, lines);
	resize_plot(&plot, &(struct margins){ 2, 1, 0, 0 });
	check_end(&plot, ROSE "  at 2,1\n  at 6,2\n  drift b front\n  drift 2,2 back\n"
		"  drift 5,1 whole\n");
	/* a drift keeps to what is left of its bed, and goes with it */
	plot_begin(&plot, lines);
	ck_assert_int_eq(resize_around_loss(&plot, &(struct margins){ -1, 0, -2, 0 }).specimens,
		2);
	resize_plot(&plot, &(struct margins){ -1, 0, -2, 0 });
	check_end(&plot, ROSE "  drift b front\n  drift 0,1 back\n");
}
END_TEST

/* Two columns put in at that of the specimen, then taken out; a row that a specimen stands in is
 * taken out. */
START_TEST(plants_go_with_a_strip)
{
	const struct strip in = { .cell = 1, .count = 2 };
	const struct strip out = { .is_out = true, .cell = 1, .count = 2 };
	const struct strip row = { .is_level = true, .is_out = true, .cell = 0, .count = 1 };
	static const char lines[] = ROSE "  at 1,0\n  at 3,1\n  drift 1,0 whole\n";
	struct plot plot;

	plot_begin(&plot, lines);
	strip_do(&plot, &in);
	check_end(&plot, ROSE "  at 3,0\n  at 5,1\n  drift 1,0 whole\n");
	plot_begin(&plot, lines);
	strip_do(&plot, &in);
	strip_do(&plot, &out);
	check_end(&plot, lines);
	plot_begin(&plot, lines);
	strip_do(&plot, &row);
	check_end(&plot, ROSE "  at 3,0\n  drift 1,0 whole\n");
}
END_TEST

START_TEST(specimens_stay_near_where_cells_are_changed_and_two_in_one_become_one)
{
	struct plot plot;
	struct rescale rescale;

	plot_begin(&plot, ROSE "  at 1,1\n  at 0,0\n  at 4,2\n  drift 1,0 back\n");
	rescale = rescale_of(&plot, 6 * NM_PER_INCH);
	ck_assert(!rescale_keeps_plants(&rescale, &plot));
	rescale_plot(&plot, &rescale);
	check_end(&plot, ROSE "  at 2,2\n  at 0,0\n  at 8,4\n  drift 3,1 back\n");
	plot_begin(&plot, ROSE "  at 1,1\n  at 0,0\n  at 3,0\n  drift c back\n");
	rescale = rescale_of(&plot, 2 * NM_PER_FOOT);
	rescale_plot(&plot, &rescale);
	check_end(&plot, ROSE "  at 0,0\n  at 1,0\n  drift c back\n");
	/* a third of a cell has its middle where the cell has it */
	plot_begin(&plot, ROSE "  at 1,1\n");
	rescale = rescale_of(&plot, 4 * NM_PER_INCH);
	ck_assert(rescale_keeps_plants(&rescale, &plot));
	rescale_plot(&plot, &rescale);
	check_end(&plot, ROSE "  at 4,4\n");
}
END_TEST

START_TEST(a_drift_has_the_new_letter_of_its_beds_and_goes_with_the_old_one)
{
	struct plot plot;

	plot_begin(&plot, ROSE "  drift b front\n  drift c back\n");
	ck_assert(!legend_is_free(&plot.details, 'r') && !legend_is_free(&plot.details, 'b'));
	ck_assert_int_eq(legend_free_letter(&plot.details, CLASS_BED), 'a');
	legend_reletter(&plot, 'b', 'a');
	legend_remove(&plot, 'c', 'a');
	check_end(&plot, ROSE "  drift a front\n");
}
END_TEST

static struct patch left_bed(const struct plot *plot)
{
	return patch_of(plot, (struct rectangle){ 0, 0, 1, 1 });
}

START_TEST(a_patch_takes_its_plants_along)
{
	struct plot plot;
	struct patch patch;

	plot_begin(&plot, ROSE "  at 0,0\n  at 4,1\n  drift 1,0 back\n  drift b front\n"
		"plant t \"Thyme\"\n  at 3,0\n  at 4,2\n");
	patch = left_bed(&plot);
	patch_turn(&patch);
	patch_stamp(&plot, &patch, 3, 0);
	patch_fini(&patch);
	check_end(&plot, ROSE "  at 0,0\n  at 4,0\n  drift 1,0 back\n  drift b front\n"
		"  drift 4,1 back\nplant t \"Thyme\"\n  at 4,2\n");
}
END_TEST

START_TEST(a_patch_that_is_laid_where_it_was_changes_nothing)
{
	static const char lines[] = ROSE "  at 0,0\n  at 4,1\n  at 1,0\n  drift 1,0 back\n"
		"  drift 3,0 back\n";
	struct plot plot;
	struct patch patch;

	plot_begin(&plot, lines);
	patch = left_bed(&plot);
	ck_assert_int_eq(patch_stamp(&plot, &patch, 0, 0).changed, 0);
	patch_fini(&patch);
	check_end(&plot, lines);
}
END_TEST

START_TEST(what_is_lifted_takes_its_plants_away_and_those_of_its_images)
{
	struct plot plot;
	struct patch patch;

	plot_begin(&plot, ROSE "  at 0,0\n  at 4,0\n  at 2,2\n  drift 3,0 back\n");
	mirror_set(&plot, MIRROR_LEFT_RIGHT);
	patch = left_bed(&plot);
	ck_assert_int_eq(patch_lift(&plot, &patch.ground, 0, 0).changed, 8 + 3);
	patch_fini(&patch);
	check_end(&plot, ROSE "  at 2,2\n");
}
END_TEST

START_TEST(a_kind_that_was_removed_is_not_laid_again)
{
	struct plot plot;
	struct patch patch;

	plot_begin(&plot, ROSE "  at 0,0\n");
	patch = left_bed(&plot);
	plants_remove(&plot.details.plants, 0);
	patch_stamp(&plot, &patch, 3, 0);
	patch_fini(&patch);
	check_end(&plot, "");
}
END_TEST

START_TEST(folding_lays_plants_over_too)
{
	struct plot plot;

	plot_begin(&plot, ROSE "  at 4,0\n  at 1,1\n  at 2,2\n  drift 1,0 back\n"
		"  drift b front\n  drift 4,0 whole\n");
	mirror_set(&plot, MIRROR_LEFT_RIGHT);
	plants_fold(&plot, (struct place){ 0, 0 });
	check_end(&plot, ROSE "  at 1,1\n  at 2,2\n  at 3,1\n  drift 1,0 back\n  drift b front\n"
		"  drift 3,0 back\n");
}
END_TEST

START_TEST(what_has_no_image_on_the_plan_is_not_folded_away)
{
	struct plot plot;

	plot_begin(&plot, ROSE "  at 4,0\n  at 1,1\n");
	mirror_set(&plot, MIRROR_LEFT_RIGHT);
	plot_set(&plot, 0, HEAD_AXIS, "3,3"); /* the image of column 4 is column -2 */
	plants_fold(&plot, (struct place){ 0, 0 });
	check_end(&plot, ROSE "  at 4,0\n  at 1,1\n");
}
END_TEST

/* ---- At random ------------------------------------------------------------------------------- */

static int64_t specimens_without_image(struct plot *plot)
{
	struct mirror mirror = mirror_of(plot);
	struct plants *plants = &plot->details.plants;
	int64_t count = 0;

	for (size_t i = 0; i < plants->count; i++)
		for (size_t j = 0; j < plants->items[i].specimen_count; j++) {
			struct place at = plants->items[i].specimens[j], images[IMAGES_MOST];

			for (int n = mirror_cells(&mirror, at.x, at.y, images); n > 0; n--)
				count += ground_holds(&plot->ground, images[n - 1].x,
					images[n - 1].y) && plant_specimen(&plants->items[i],
					images[n - 1]) == plants->items[i].specimen_count;
		}
	return count;
}

/* A plot of any size with a mirror in its middle, and plants that are each other's images. */
static void symmetric_at_random(struct plot *plot, struct random *random)
{
	struct mirror mirror;
	struct plants imaged;

	plot_at_random(plot, random, 12, "bc.p");
	mirror_set(plot, (enum mirror_kind)random_between(random, MIRROR_LEFT_RIGHT,
		MIRROR_HALF_TURN));
	plants_at_random(plot, random);
	mirror = mirror_of(plot);
	imaged = plants_imaged(&plot->details.plants, &mirror, &plot->ground);
	plants_fini(&plot->details.plants);
	plot->details.plants = imaged;
	plot_check(plot);
	ck_assert_int_eq(specimens_without_image(plot), 0);
}

/* Of an even number, since half a cell can lie on neither side of the axis. */
START_TEST(specimens_that_matched_do_so_with_a_strip)
{
	int done = 0;

	for (int seed = 0; seed < CASES; seed++) {
		struct random random = { (uint64_t)seed };
		struct plot plot;
		struct strip strip = { .count = 2 * random_between(&random, 1, 3) };

		symmetric_at_random(&plot, &random);
		strip.is_level = random_below(&random, 2);
		strip.is_out = random_below(&random, 2);
		strip.cell = random_below(&random, strip.is_level ? plot.ground.rows :
			plot.ground.columns);
		if (strip_check(&plot, &strip) == STRIP_FITS) {
			strip_do(&plot, &strip);
			plot_check(&plot);
			ck_assert_msg(specimens_without_image(&plot) == 0, "seed %d", seed);
			done++;
		}
		plot_fini(&plot);
	}
	ck_assert_int_gt(done, CASES / 3);
}
END_TEST

/* What stands on the axis may have no cell of its own there: such plots are left out. */
static bool has_one_on_axis(const struct plot *plot)
{
	struct mirror mirror = mirror_of(plot);

	for (size_t i = 0; i < plot->details.plants.count; i++) {
		const struct plant *plant = &plot->details.plants.items[i];

		for (size_t j = 0; j < plant->specimen_count; j++) {
			struct place images[IMAGES_MOST], at = plant->specimens[j];

			if (2 * at.x + 1 == mirror.across || 2 * at.y + 1 == mirror.down ||
				mirror_cells(&mirror, at.x, at.y, images) == 1)
				return true;
		}
	}
	return false;
}

START_TEST(specimens_that_matched_do_so_where_cells_are_changed)
{
	static const nm cells[] = { NM_PER_FOOT / 2, NM_PER_FOOT / 3, 2 * NM_PER_FOOT,
		3 * NM_PER_FOOT, 7 * NM_PER_INCH, 250 * NM_PER_MM };
	int done = 0;

	for (int seed = 0; seed < CASES; seed++) {
		struct random random = { (uint64_t)seed };
		struct plot plot;
		struct rescale rescale;

		symmetric_at_random(&plot, &random);
		rescale = rescale_of(&plot, cells[random_below(&random,
			(int)(sizeof cells / sizeof *cells))]);
		if (!has_one_on_axis(&plot)) {
			rescale_plot(&plot, &rescale);
			plot_check(&plot);
			ck_assert_msg(specimens_without_image(&plot) == 0, "seed %d", seed);
			done++;
		}
		plot_fini(&plot);
	}
	ck_assert_int_gt(done, CASES / 4);
}
END_TEST

START_TEST(a_folded_plan_has_an_image_of_each_and_a_stamped_one_too)
{
	for (int seed = 0; seed < CASES; seed++) {
		struct random random = { (uint64_t)seed };
		struct plot plot;
		struct patch patch;
		int x, y;

		symmetric_at_random(&plot, &random);
		x = random_below(&random, plot.ground.columns);
		y = random_below(&random, plot.ground.rows);
		patch = patch_of(&plot, rectangle_between(x, y,
			random_below(&random, plot.ground.columns),
			random_below(&random, plot.ground.rows)));
		patch_stamp(&plot, &patch, random_between(&random, -2, plot.ground.columns),
			random_between(&random, -2, plot.ground.rows));
		patch_fini(&patch);
		plot_check(&plot);
		ck_assert_msg(specimens_without_image(&plot) == 0, "seed %d", seed);
		plants_fini(&plot.details.plants);
		plants_at_random(&plot, &random);
		plants_fold(&plot, (struct place){ x, y });
		plot_check(&plot);
		ck_assert_msg(specimens_without_image(&plot) == 0, "seed %d", seed);
		plot_fini(&plot);
	}
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("plants move");
	TCase *moving = suite_case(suite, "moving"), *laying = suite_case(suite, "laying"),
		*any = suite_case(suite, "random");

	tcase_add_test(moving, plants_move_where_the_plan_grows_and_go_where_it_is_cropped);
	tcase_add_test(moving, plants_go_with_a_strip);
	tcase_add_test(moving,
		specimens_stay_near_where_cells_are_changed_and_two_in_one_become_one);
	tcase_add_test(moving, a_drift_has_the_new_letter_of_its_beds_and_goes_with_the_old_one);
	tcase_add_test(laying, a_patch_takes_its_plants_along);
	tcase_add_test(laying, a_patch_that_is_laid_where_it_was_changes_nothing);
	tcase_add_test(laying, what_is_lifted_takes_its_plants_away_and_those_of_its_images);
	tcase_add_test(laying, a_kind_that_was_removed_is_not_laid_again);
	tcase_add_test(laying, folding_lays_plants_over_too);
	tcase_add_test(laying, what_has_no_image_on_the_plan_is_not_folded_away);
	tcase_add_test(any, specimens_that_matched_do_so_with_a_strip);
	tcase_add_test(any, specimens_that_matched_do_so_where_cells_are_changed);
	tcase_add_test(any, a_folded_plan_has_an_image_of_each_and_a_stamped_one_too);
	return suite;
}
