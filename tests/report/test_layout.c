/* What stands where on a sheet, by law, with remarks of any height beside plans of any size. */
#include "report/svg/layout.h"
#include "support/garden.h"
#include "support/runner.h"

#include <string.h>

enum { REMARKS_MOST = 40 };

static struct garden garden;
static struct remark list[REMARKS_MOST];
static struct remarks remarks;
static struct arena words;
static struct report report;

static void teardown(void)
{
	arena_clear(&words);
	garden_fini(&garden);
}

/* A plan of a lawn, and remarks of 3 to 40 mm. */
static void prepare(struct random *random)
{
	int cell = random_between(random, 1, 20);

	garden = (struct garden){ .arena = ARENA_EMPTY };
	garden_rectangle(&garden, 'l', random_between(random, 1, 60),
		random_between(random, 1, 60));
	block_set(&garden.plot.details.head, HEAD_CELL,
		(struct value){ .set = true, .as.length = cell * NM_PER_INCH });
	block_set(&garden.plot.details.head, HEAD_UNITS,
		(struct value){ .set = true, .as.number = random_below(random, 2) });
	garden_count(&garden);
	words = ARENA_EMPTY;
	report = (struct report){ .words = &words, .plot = &garden.plot,
		.takeoff = &garden.takeoff, .units = plot_units(&garden.plot) };
	remarks = (struct remarks){ list, random_between(random, 1, REMARKS_MOST), 0 };
	remarks.needed = random_between(random, 0, remarks.count < 12 ? remarks.count : 12);
	for (int i = 0; i < remarks.count; i++)
		list[i] = (struct remark){ .height = random_between(random, 3, 40) * NM_PER_MM,
			.leads = i > 0 && !list[i - 1].leads && random_below(random, 5) == 0 };
}

static bool is_within(struct box box, struct box outer)
{
	return box.left >= outer.left && box.right <= outer.right && box.top >= outer.top &&
		box.bottom <= outer.bottom;
}

static bool overlap(struct box a, struct box b)
{
	return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

static struct box plan_on(const struct layout *layout, int scale)
{
	const struct survey *survey = &garden.takeoff.survey;
	struct at from = layout->datum;

	return (struct box){ from.x, from.y, from.x + scaled(survey->columns * survey->cell, scale),
		from.y + scaled(survey->rows * survey->cell, scale) };
}

/* Remarks stand in the order that they have, each in the part for them, none on another, a heading
 * above what it is of. */
static void check_places(const struct layout *layout)
{
	struct at at[REMARKS_MOST] = { { 0, 0 } };
	struct box boxes[REMARKS_MOST];
	int count = layout->beyond - layout->first;

	layout_places(layout, &remarks, at);
	for (int i = 0; i < count; i++) {
		boxes[i] = (struct box){ at[i].x, at[i].y, at[i].x + COLUMN_WIDTH * NM_PER_MM,
			at[i].y + list[layout->first + i].height };
		ck_assert(is_within(boxes[i], layout->aside));
		for (int j = 0; j < i; j++)
			ck_assert(!overlap(boxes[i], boxes[j]));
		if (i > 0 && list[layout->first + i - 1].leads)
			ck_assert_int_eq(at[i].x, at[i - 1].x);
	}
}

static void check_first(const struct layout *layout, int seed)
{
	struct box page = { 0, 0, layout->width, layout->height };
	struct box within = box_grown(page, -9 * NM_PER_MM);

	ck_assert(is_within(layout->title, within) && is_within(layout->field, within) &&
		is_within(layout->aside, within));
	ck_assert(!overlap(layout->title, layout->field));
	ck_assert(!overlap(layout->title, layout->aside));
	ck_assert(!overlap(layout->field, layout->aside));
	ck_assert_msg(is_within(box_grown(plan_on(layout, layout->scale), 11 * NM_PER_MM),
		layout->field), "seed %d", seed);
	ck_assert_int_ge(layout->beyond, remarks.needed);
	check_places(layout);
}

/* The next larger scale would not fit where the plan has its most room: beside no more than what
 * it needs. */
static void check_is_largest(const struct layout *layout, const struct svg_asked *asked, int seed)
{
	const int *usual = scales_of(report.units), *larger = NULL;
	struct svg_asked other = *asked;
	struct text why = TEXT_EMPTY;
	struct layout next;

	for (; *usual != layout->scale; usual++)
		larger = usual;
	if (!larger)
		return;
	other.scale = *larger;
	ck_assert_msg(!layout_find(&next, &other, &report, &remarks, &why), "seed %d: 1:%d", seed,
		*larger);
	ck_assert(why.length > 0);
	text_fini(&why);
}

START_TEST(all_parts_have_their_own_room_and_the_plan_is_as_large_as_can_be)
{
	struct random random = { (uint64_t)_i };
	struct svg_asked asked = SVG_AS_FITS;
	struct text why = TEXT_EMPTY;
	struct layout layout;
	int next;

	prepare(&random);
	asked.paper = random_below(&random, PAPERS + 1) - 1;
	asked.turn = random_below(&random, PAPER_TURNS + 1) - 1;
	if (!layout_find(&layout, &asked, &report, &remarks, &why)) {
		ck_assert(strstr(why.bytes, "too large"));
		text_fini(&why);
		return;
	}
	check_first(&layout, _i);
	if (asked.paper != AS_FITS)
		check_is_largest(&layout, &asked, _i);
	/* Each remark is on one sheet. */
	next = layout.beyond;
	for (asked.sheet = 2; asked.sheet <= layout.sheets; asked.sheet++) {
		struct layout later;

		ck_assert(layout_find(&later, &asked, &report, &remarks, &why));
		ck_assert_int_eq(later.first, next);
		ck_assert_int_gt(later.beyond, later.first);
		ck_assert_int_eq(later.scale, layout.scale);
		check_places(&later);
		next = later.beyond;
	}
	ck_assert_int_eq(next, remarks.count);
	ck_assert(!layout_find(&layout, &asked, &report, &remarks, &why));
	ck_assert(strstr(why.bytes, "so there is no sheet"));
	text_fini(&why);
}
END_TEST

START_TEST(paper_is_letter_or_a4_unless_the_plan_takes_twice_that)
{
	static const struct {
		int side, cell; /* cells; inches */
		enum units units;
		enum paper paper;
	} rows[] = { { 16, 12, UNITS_IMPERIAL, PAPER_LETTER }, { 16, 12, UNITS_METRIC, PAPER_A4 },
		{ 340, 12, UNITS_IMPERIAL, PAPER_TABLOID }, { 350, 11, UNITS_METRIC, PAPER_A3 } };
	struct svg_asked asked = SVG_AS_FITS;
	struct text why = TEXT_EMPTY;
	struct layout layout;
	struct random random = { 1 };

	prepare(&random);
	garden_fini(&garden);
	garden_rectangle(&garden, 'l', rows[_i].side, rows[_i].side);
	block_set(&garden.plot.details.head, HEAD_CELL,
		(struct value){ .set = true, .as.length = rows[_i].cell * NM_PER_INCH });
	garden_count(&garden);
	report.units = rows[_i].units;
	remarks.count = remarks.needed = 3;
	ck_assert_msg(layout_find(&layout, &asked, &report, &remarks, &why), "%s", why.bytes);
	ck_assert_int_eq(layout.paper, rows[_i].paper);
	text_fini(&why);
}
END_TEST

/* 700 ft by 300 ft on a tabloid sheet. Of 431.8 mm margins, a column of remarks, the gap beside it
 * and the room round the plan leave 323.8 mm; of 279.4 mm, with the title, 207.4 mm. */
START_TEST(a_plan_that_no_scale_takes_is_refused_with_the_smallest)
{
	struct svg_asked asked = SVG_AS_FITS;
	struct text why = TEXT_EMPTY;
	struct layout layout;
	struct random random = { 1 };

	prepare(&random);
	garden_fini(&garden);
	garden_rectangle(&garden, 'l', 70, 30);
	plot_set(&garden.plot, 0, HEAD_CELL, "10 ft");
	garden_count(&garden);
	report.units = UNITS_IMPERIAL;
	remarks.count = remarks.needed = 3;
	ck_assert(!layout_find(&layout, &asked, &report, &remarks, &why));
	ck_assert_str_eq(why.bytes, "the plan is too large for Tabloid landscape at any scale down "
		"to 1:600: it takes 14 in x 6 in on paper, where there is room for 12 3/4 in x "
		"8 3/16 in");
	text_fini(&why);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("layout");
	TCase *layout = suite_case(suite, "layout");

	tcase_add_checked_fixture(layout, NULL, teardown);
	tcase_add_loop_test(layout,
		all_parts_have_their_own_room_and_the_plan_is_as_large_as_can_be, 0,
		runner_count(100, 5000));
	tcase_add_loop_test(layout, paper_is_letter_or_a4_unless_the_plan_takes_twice_that, 0, 4);
	tcase_add_test(layout, a_plan_that_no_scale_takes_is_refused_with_the_smallest);
	return suite;
}
