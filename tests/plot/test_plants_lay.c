/* Setting, lifting and filling, as the plot's file then says it. */
#include "plot/edit/plants_lay.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/runner.h"

#define ROSE "plant r \"Rose\"\n"
#define SEDGE "plant s \"Sedge\"\n"

static const char *const garden[] = { "bb.pp", "bb.bb", "ll.S.", NULL };

static void plot_begin(struct plot *plot, enum mirror_kind kind, const char *lines)
{
	plot_from_rows(plot, garden);
	plot_add_lines(plot, lines);
	block_set(&plot->details.head, HEAD_MIRROR,
		(struct value){ .set = true, .as.number = kind });
}

/* What follows the ground, and ends the plot. */
static void check_end(struct plot *plot, const char *expected)
{
	plot_check_later(plot, expected);
	plot_fini(plot);
}

static void check_planted(struct planted planted, int changed, bool outside, bool is_barred)
{
	ck_assert_int_eq(planted.changed, changed);
	ck_assert_int_eq(planted.outside, outside);
	ck_assert_int_eq(planted.is_barred, is_barred);
}

START_TEST(plants_stand_on_beds_lawns_and_open_ground)
{
	ck_assert(class_takes_plant(CLASS_BED) && class_takes_plant(CLASS_LAWN));
	ck_assert(class_takes_plant(CLASS_OPEN));
	ck_assert(!class_takes_plant(CLASS_PATH) && !class_takes_plant(CLASS_FIXTURE));
}
END_TEST

START_TEST(a_specimen_is_set_once_with_its_image)
{
	struct plot plot;

	plot_begin(&plot, MIRROR_LEFT_RIGHT, ROSE SEDGE);
	check_planted(plants_set(&plot, 'r', (struct place){ 0, 1 }), 2, false, false);
	check_planted(plants_set(&plot, 'r', (struct place){ 4, 1 }), 0, false, false);
	check_planted(plants_set(&plot, 'r', (struct place){ 2, 0 }), 1, false, false);
	check_end(&plot, ROSE "  at 0,1\n  at 4,1\n  at 2,0\n" SEDGE);
}
END_TEST

START_TEST(one_of_another_kind_makes_room)
{
	struct plot plot;

	plot_begin(&plot, MIRROR_OFF, ROSE "  at 0,0\n  at 1,0\n" SEDGE);
	check_planted(plants_set(&plot, 's', (struct place){ 0, 0 }), 2, false, false);
	check_end(&plot, ROSE "  at 1,0\n" SEDGE "  at 0,0\n");
}
END_TEST

/* The image of 0,0 is path, that of 1,2 a fixture; beside an axis at the left edge all images of
 * column 2 and on are beyond the plan. */
START_TEST(no_image_is_set_on_hard_ground_or_beyond_the_plan)
{
	struct plot plot;

	plot_begin(&plot, MIRROR_LEFT_RIGHT, ROSE);
	check_planted(plants_set(&plot, 'r', (struct place){ 0, 0 }), 1, false, true);
	check_planted(plants_set(&plot, 'r', (struct place){ 1, 2 }), 1, false, true);
	plot_set(&plot, 0, HEAD_AXIS, "1,3");
	check_planted(plants_set(&plot, 'r', (struct place){ 2, 1 }), 1, true, false);
	check_end(&plot, ROSE "  at 0,0\n  at 1,2\n  at 2,1\n");
}
END_TEST

START_TEST(what_is_lifted_goes_with_the_images_of_its_kind)
{
	struct plot plot;

	plot_begin(&plot, MIRROR_LEFT_RIGHT, ROSE "  at 0,1\n  at 4,1\n  at 0,2\n" SEDGE
		"  at 4,1\n  at 0,2\n");
	ck_assert_int_eq(plants_lift(&plot, (struct place){ 0, 1 }), 2);
	ck_assert_int_eq(plants_lift(&plot, (struct place){ 0, 1 }), 0);
	ck_assert_int_eq(plants_lift(&plot, (struct place){ 0, 2 }), 2);
	check_end(&plot, ROSE SEDGE "  at 4,1\n");
}
END_TEST

START_TEST(a_bed_and_its_image_are_filled)
{
	struct plot plot;

	plot_begin(&plot, MIRROR_LEFT_RIGHT, ROSE);
	check_planted(plants_fill(&plot, 'r', (struct place){ 1, 1 }, BAND_BACK, false), 2, false,
		false);
	check_planted(plants_fill(&plot, 'r', (struct place){ 1, 1 }, BAND_BACK, false), 0, false,
		false);
	check_planted(plants_fill(&plot, 'r', (struct place){ 1, 1 }, BAND_FRONT, true), 1, false,
		false);
	check_planted(plants_fill(&plot, 'r', (struct place){ 0, 0 }, BAND_WHOLE, false), 1, false,
		true);
	check_end(&plot, ROSE "  drift 1,1 back\n  drift 3,1 back\n  drift b front\n"
		"  drift 0,0 whole\n");
}
END_TEST

/* Mirrored top to bottom about the middle of rows 0 and 1 the left bed is its own image. */
START_TEST(a_bed_that_is_its_own_image_is_filled_once)
{
	struct plot plot;

	plot_begin(&plot, MIRROR_TOP_BOTTOM, ROSE);
	plot_set(&plot, 0, HEAD_AXIS, "5,2");
	check_planted(plants_fill(&plot, 'r', (struct place){ 0, 1 }, BAND_WHOLE, false), 1, false,
		false);
	check_end(&plot, ROSE "  drift 0,1 whole\n");
}
END_TEST

START_TEST(a_bed_is_filled_once_from_whatever_cell)
{
	struct plot plot;

	plot_begin(&plot, MIRROR_LEFT_RIGHT, ROSE);
	check_planted(plants_fill(&plot, 'r', (struct place){ 1, 1 }, BAND_BACK, false), 2, false,
		false);
	check_planted(plants_fill(&plot, 'r', (struct place){ 4, 1 }, BAND_BACK, false), 0, false,
		false);
	check_planted(plants_fill(&plot, 'r', (struct place){ 4, 1 }, BAND_FRONT, false), 2, false,
		false);
	check_planted(plants_fill(&plot, 'r', (struct place){ 1, 1 }, BAND_BACK, true), 1, false,
		false);
	check_planted(plants_fill(&plot, 'r', (struct place){ 0, 1 }, BAND_BACK, false), 0, false,
		false);
	check_end(&plot, ROSE "  drift 4,1 front\n  drift 0,1 front\n  drift b back\n");
}
END_TEST

START_TEST(a_band_is_emptied_with_its_images)
{
	static const struct drift one = { .at = { 3, 1 }, .band = BAND_BACK };
	static const struct drift all = { .letter = 'b', .band = BAND_FRONT };
	struct plot plot;

	plot_begin(&plot, MIRROR_LEFT_RIGHT, ROSE "  drift 1,1 back\n  drift b front\n"
		"  drift 3,1 back\n  drift 1,1 front\n");
	ck_assert_int_eq(plants_empty(&plot, 'r', one), 2);
	ck_assert_int_eq(plants_empty(&plot, 'r', one), 0);
	ck_assert_int_eq(plants_empty(&plot, 'r', all), 1);
	check_end(&plot, ROSE "  drift 1,1 front\n");
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("plants lay");
	TCase *specimens = suite_case(suite, "specimens"), *drifts = suite_case(suite, "drifts");

	tcase_add_test(specimens, plants_stand_on_beds_lawns_and_open_ground);
	tcase_add_test(specimens, a_specimen_is_set_once_with_its_image);
	tcase_add_test(specimens, one_of_another_kind_makes_room);
	tcase_add_test(specimens, no_image_is_set_on_hard_ground_or_beyond_the_plan);
	tcase_add_test(specimens, what_is_lifted_goes_with_the_images_of_its_kind);
	tcase_add_test(drifts, a_bed_and_its_image_are_filled);
	tcase_add_test(drifts, a_bed_that_is_its_own_image_is_filled_once);
	tcase_add_test(drifts, a_bed_is_filled_once_from_whatever_cell);
	tcase_add_test(drifts, a_band_is_emptied_with_its_images);
	return suite;
}
