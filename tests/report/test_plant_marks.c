/* Plants in the drawing to scale. */
#include "report/svg/svg.h"
#include "support/planting.h"
#include "support/runner.h"

#include <stdlib.h>
#include <string.h>

static struct garden garden;
static struct text drawing;

static void setup(void)
{
	drawing = TEXT_EMPTY;
}

static void teardown(void)
{
	text_fini(&drawing);
	garden_fini(&garden);
}

static void draw(void)
{
	const struct svg_asked asked = SVG_AS_FITS;
	struct text_sink sink = text_sink(&drawing);

	text_cut(&drawing, 0);
	garden_count(&garden);
	report_svg(&sink.sink, &garden.plot, &garden.takeoff, "planted.plot", &asked);
}

static int count(const char *what)
{
	int found = 0;

	for (const char *at = strstr(drawing.bytes, what); at; at = strstr(at + 1, what))
		found++;
	return found;
}

/* And one beside the plan, which says what they are. */
START_TEST(each_plant_has_a_circle_and_its_kind_a_sign)
{
	planting_bed(&garden, 8, 4, "1 ft");
	draw();
	ck_assert_int_eq(count("<circle"), 0);
	planting_add(&garden, "spacing 12 in\n  drift b whole");
	draw();
	ck_assert_int_eq(count("<circle"), 30 + 1);
	ck_assert_int_ge(count(">z<"), 1);
	ck_assert_int_ge(count("Plant, 30: as wide as it"), 1);
}
END_TEST

/* 30 in wide at a scale that is read off the sheet: the plan is 8 ft wide. */
START_TEST(a_circle_is_as_wide_as_the_plant_grows)
{
	planting_bed(&garden, 8, 4, "1 ft");
	planting_add(&garden, "spread 30 in\n  at 4,2");
	draw();
	const char *circle = strstr(drawing.bytes, "<circle");
	const char *radius = strstr(circle, " r=\"");
	const char *scale = strstr(drawing.bytes, "1:");

	ck_assert_ptr_nonnull(circle);
	ck_assert_ptr_nonnull(radius);
	ck_assert_ptr_nonnull(scale);
	ck_assert_double_eq_tol(strtod(radius + 4, NULL), 15 * 25.4 / strtod(scale + 2, NULL),
		0.001);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("plant marks");
	TCase *marks = suite_case(suite, "marks");

	tcase_add_checked_fixture(marks, setup, teardown);
	tcase_add_test(marks, each_plant_has_a_circle_and_its_kind_a_sign);
	tcase_add_test(marks, a_circle_is_as_wide_as_the_plant_grows);
	return suite;
}
