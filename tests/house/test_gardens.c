/* Gardens as somebody draws them who has just begun, with what the screen and its lists offer, and
 * how many keys each takes:
 *
 *	                                  presses   at most   typed besides: titles, names, measures
 *	herbs, 24 ft by 16 ft                  70       110   8
 *	vegetables and roses, 9 m by 6 m       63        90   6
 *	the same, changed                      58        60   5
 *	planted and watered, 24 ft by 14 ft   106       120   17
 *
 * README.md has a first one, with a test of its own. */
#include "report/words/snag_words.h"
#include "support/garden.h"
#include "support/runner.h"
#include "support/stroll.h"
#include "support/table.h"

#include <string.h>

#define COUNT(way) (sizeof (way) / sizeof *(way))

static struct table at;
static struct garden garden;

static void teardown(void)
{
	garden_fini(&garden);
	table_leave(&at);
}

/* Goes all the way and leaves; the garden is what then is in the file. So many presses it takes, no
 * more than `most`, and so many things are typed besides. */
static void draw(const struct stroll *way, size_t count, struct strolled takes, int most)
{
	struct strolled strolled = stroll_walk(at.t, way, count);

	ck_assert_int_eq(terminal_end(at.t).code, 0);
	ck_assert_int_eq(strolled.presses, takes.presses);
	ck_assert_int_eq(strolled.typed, takes.typed);
	ck_assert_int_le(strolled.presses, most);
	terminal_free(at.t);
	at.t = NULL;
	garden_file(&garden, at.plot);
	garden_count(&garden);
}

static void begin(const char *name)
{
	table_clear(&at, name);
	table_start(&at, NULL);
	terminal_wait(at.t, "Begin a new plot");
}

/* ---- What has come of it --------------------------------------------------------------------- */

static void check_cells(int columns, int rows, enum mirror_kind kind)
{
	struct mirror mirror = mirror_of(&garden.plot);

	ck_assert_int_eq(garden.plot.ground.columns, columns);
	ck_assert_int_eq(garden.plot.ground.rows, rows);
	ck_assert_int_eq(mirror.kind, kind);
	ck_assert_int_eq(mirror_faults(&mirror, &garden.plot.ground), 0);
}

/* Row y of the plan, as the file has it. */
static void check_row(int y, const char *letters)
{
	const struct ground *ground = &garden.plot.ground;

	ck_assert_int_eq((int)strlen(letters), ground->columns);
	for (int x = 0; x < ground->columns; x++)
		ck_assert_msg(ground_cell(ground, x, y) == letters[x], "%d,%d: %c, not %c", x, y,
			ground_cell(ground, x, y), letters[x]);
}

/* The words of all snags in their order. */
static void check_snags(const char *words)
{
	struct text found = TEXT_EMPTY;

	text_add(&found, "");
	for (size_t i = 0; i < garden.takeoff.snags.count; i++)
		text_print(&found, "%s%s", i ? " " : "",
			snag_word(garden.takeoff.snags.list[i].code));
	ck_assert_str_eq(found.bytes, words);
	text_fini(&found);
}

static void check_entry(char letter, const char *name)
{
	ck_assert_str_eq(plot_entry(&garden.plot, letter)->name, name);
}

/* ---- Herbs: 24 ft by 16 ft ------------------------------------------------------------------- */

/* A path of 3 ft down the middle of 24 ft: cells of 6 in, six of them about the axis. */
static const struct stroll herbs[] = {
	{ "Herb garden", "enter x3", "Depth" },
	{ "16 ft", "enter", "A number alone is in inches" },
	{ "6 in", "enter", "A new plot" },
	{ NULL, "| -", "four-way" },
	/* Four raised beds, 3 ft and the frame away from the fence. */
	{ NULL, "b 7 right 7 down enter", "Pegged" },
	{ NULL, "1 3 right 5 down enter x2", "b Raised bed         84.0" },
	{ NULL, "p right *", "p Crushed stone     300.0" },
	{ NULL, "l home pageup enter end pagedown enter", "Frame it" },
	{ NULL, "down enter", "Thickness" },
	{ NULL, "enter", "l Turf               39.0" },
	/* Where the paths cross, a disc of another stone. */
	{ NULL, "# a d d enter", "Add what" },
	{ NULL, "down enter", "A new path" },
	{ "Slate chips", "enter", "The letter" },
	{ "s", "pagedown enter", "In the legend and in hand: s Slate chips" },
	{ NULL, "@", "Across" },
	{ "12 ft", "enter", "Down from" },
	{ "8 ft", "enter", "12 ft across, 8 ft down" },
	{ NULL, "! d i s enter", "Diameter" },
	{ "3 ft", "enter", "s Slate chips         8.0" },
	/* The path goes out at the bottom alone, to a gate. */
	{ NULL, "- pagedown p", "left-right" },
	{ NULL, "enter 2 right enter x2", "p Crushed stone     254.5" },
	{ NULL, ": w enter", "80 ft laid" },
	{ NULL, ": s e enter", "a gate set, 4 ft" },
	{ NULL, "> > <", NULL },
};

START_TEST(an_herb_garden_takes_110_presses_at_most)
{
	const struct fence *fence;
	const struct leg gate = { { 20, 32 }, { 28, 32 } };
	struct legs legs = LEGS_EMPTY;

	begin("herbs.plot");
	draw(herbs, COUNT(herbs), (struct strolled){ .presses = 70, .typed = 8 }, 110);
	check_cells(48, 32, MIRROR_LEFT_RIGHT);
	check_row(0, "llllllllllllllllllllllllllllllllllllllllllllllll");
	check_row(1, "lppppppppppppppppppppppppppppppppppppppppppppppl");
	check_row(7, "lppppppbbbbbbbbbbbbbbppppppbbbbbbbbbbbbbbppppppl");
	check_row(13, "lpppppppppppppppppppppsssspppppppppppppppppppppl");
	fence = garden.plot.details.fences;
	fence_legs(fence, &legs);
	ck_assert_int_eq(legs_length(&legs), 160);
	legs_fini(&legs);
	ck_assert_uint_eq(fence->gates.count, 1);
	ck_assert(leg_equal(leg_forward(fence->gates.items[0]), gate));
	ck_assert_int_eq(garden.takeoff.walls.count, 4);
	check_entry('s', "Slate chips");
	/* A frame of turf 6 in wide is clipped by hand. */
	check_snags("lawn-narrow");
}
END_TEST

/* ---- Vegetables: 9 m by 6 m ------------------------------------------------------------------ */

static const struct stroll kitchen[] = {
	{ "Kitchen garden", "enter space enter", "Width, left to right" },
	{ "9", "enter", "taken as 9 m" },
	{ "6", "enter", "taken as 6 m" },
	{ "250", "enter", "A new plot" },
	{ NULL, "|", "left-right" },
	/* The long beds at both sides are for roses. */
	{ NULL, "# a d d enter x2", "A new bed" },
	{ "Rose bed", "enter", "The letter" },
	{ "r", "pagedown enter", "In the legend and in hand: r Rose bed" },
	{ NULL, "right down enter", "Pegged" },
	{ NULL, "3 right 2 1 down enter x2", "r Rose bed          11.00" },
	/* Between them L-shaped ones, of two rectangles. */
	{ NULL, "b 5 right pageup 5 down enter", "Pegged" },
	{ NULL, "3 right 1 3 down enter x2", "b Raised bed         7.00" },
	{ NULL, "enter 3 up 3 right enter x2", "b Raised bed         8.50" },
	{ NULL, "p right *", "p Crushed stone     34.50" },
	{ NULL, "l home pageup enter end pagedown enter", "Frame it" },
	{ NULL, "down enter", "Thickness" },
	{ NULL, "enter", "l Turf               7.25" },
	{ NULL, "> > <", NULL },
};

static void draw_kitchen(void)
{
	begin("kitchen.plot");
	draw(kitchen, COUNT(kitchen), (struct strolled){ .presses = 63, .typed = 6 }, 90);
}

START_TEST(a_metric_garden_takes_90_presses_at_most)
{
	draw_kitchen();
	check_cells(36, 24, MIRROR_LEFT_RIGHT);
	ck_assert_int_eq(plot_units(&garden.plot), UNITS_METRIC);
	check_row(0, "llllllllllllllllllllllllllllllllllll");
	check_row(1, "lrrrrpppppppppppppppppppppppppprrrrl");
	check_row(5, "lrrrrppppbbbbppppppppppbbbbpppprrrrl");
	check_row(18, "lrrrrppppbbbbbbbppppbbbbbbbpppprrrrl");
	check_row(19, "lrrrrpppppppppppppppppppppppppprrrrl");
	ck_assert_int_eq(garden.takeoff.walls.count, 4);
	check_entry('r', "Rose bed");
	/* A frame of turf 250 mm wide is clipped by hand. */
	check_snags("lawn-narrow");
}
END_TEST

/* ---- The same, a year later ------------------------------------------------------------------ */

static const struct stroll changes[] = {
	/* The paths beside the roses become half a metre wider. */
	{ NULL, "6 right 6 down", "P1 p Crushed stone" },
	{ NULL, "! i n s enter", "Columns here, and their image" },
	{ NULL, "enter", "Put in columns" },
	{ ".5", "enter", "The plan is 10 m x 6 m now" },
	/* The L gets a name, and moves a cell aside with its image. */
	{ NULL, "7 right ! n a m enter", "Name" },
	{ "Herbs", "enter", "Herbs" },
	{ NULL, "! m a down enter", "Marked: 1.75 m x 3.5 m" },
	{ NULL, "left enter x2", "Moved; Backspace" },
	/* What it has left becomes path. */
	{ NULL, "4 right p *", ". Open ground         0.50" },
	{ NULL, "ctrl-down 3 right *", ". Open ground         0.00" },
	/* The roses are of an old kind. */
	{ NULL, "# r o enter", "The bed r" },
	{ "Old roses", "pagedown enter", "r Old roses" },
	/* Half a metre more of turf at both sides. */
	{ NULL, "! g r o w enter x2", "Grow; with a minus" },
	{ ".5", "enter x2", "Right" },
	{ ".5", "enter x2", "The plan is 11 m x 6 m now" },
	{ NULL, "home l *", ". Open ground         0.00" },
	{ NULL, "> > <", NULL },
};

START_TEST(changing_it_takes_60_presses_at_most)
{
	const struct survey *survey = &garden.takeoff.survey;

	draw_kitchen();
	garden_fini(&garden);
	table_start(&at, NULL);
	table_wait(at.t);
	draw(changes, COUNT(changes), (struct strolled){ .presses = 58, .typed = 5 }, 60);
	check_cells(44, 24, MIRROR_LEFT_RIGHT);
	check_row(0, "llllllllllllllllllllllllllllllllllllllllllll");
	check_row(1, "lllrrrrpppppppppppppppppppppppppppppprrrrlll");
	check_row(5, "lllrrrrpppppbbbbppppppppppppbbbbppppprrrrlll");
	check_row(18, "lllrrrrpppppbbbbbbbppppppbbbbbbbppppprrrrlll");
	ck_assert_int_eq(garden.takeoff.walls.count, 4);
	check_entry('r', "Old roses");
	ck_assert_int_eq(survey->name_count, 1);
	ck_assert_str_eq(survey_own_name(survey, survey_region_at(survey, 12, 5)), "Herbs");
	/* Of the frame what is still 250 mm wide, above and below. */
	check_snags("lawn-narrow lawn-narrow");
}
END_TEST

/* ---- Planted and watered: 24 ft by 14 ft ----------------------------------------------------- */

static const struct stroll planted[] = {
	{ "Sun court", "enter x3", "Depth" },
	{ "14 ft", "enter", "A number alone is in inches" },
	{ "1 ft", "enter", "A new plot" },
	/* The plan's top looks east, at the latitude of 52 degrees. */
	{ NULL, "| # p l o t enter down x3", "Bearing of plan's top" },
	{ "90", "down", "Latitude" },
	{ "52", "pagedown enter", "Set; Backspace" },
	{ NULL, "b right down enter", "Pegged" },
	{ NULL, "7 right 3 down enter x2", "8 ft x 4 ft, 32.0 sq ft" },
	{ NULL, "p right *", "p Crushed stone     272.0" },
	/* Beds have drip lines, from a tap in the middle of the plan's foot. */
	{ NULL, "# b enter pagedown up x4", "By drip lines on the soil" },
	{ NULL, "d pagedown enter", "Set; Backspace" },
	{ NULL, "@", "How far the place is" },
	{ "12 ft", "enter", "Down from" },
	{ "13 ft", "enter", "12 ft across, 13 ft down" },
	{ NULL, "! t a p enter", "Water comes from 12 ft across, 14 ft down" },
	/* A house stands along the top. */
	{ NULL, "! h o u s enter", "A house" },
	{ "Home", "enter", "Left edge" },
	{ "0", "enter", "Top edge" },
	{ "-8", "enter", "Width" },
	{ "24", "enter", "Depth" },
	{ "8", "enter", "Height" },
	{ "18", "pagedown enter", "House: Home, 24 ft x 8 ft" },
	/* Both beds are filled, about a rose in the middle of each. */
	{ NULL, "! n e w space p l enter", "A new plant" },
	{ "Lavender", "enter x2", "Spacing" },
	{ "15 in", "pagedown enter", "In hand: a Lavender" },
	{ NULL, "home pageup right down ! d r i f enter", "How much of the bed" },
	{ NULL, "enter x2", "a Lavender fills it" },
	{ NULL, "! n e w space p l enter", "A new plant" },
	{ "Rose", "enter x2", "Spacing" },
	{ "18 in", "pagedown enter", "In hand: c Rose" },
	{ NULL, "3 right down space", "Plant: c Rose" },
	{ NULL, "> > <", NULL },
};

START_TEST(a_planted_and_watered_garden_takes_120_presses_at_most)
{
	const struct details *details = &garden.plot.details;
	const struct takeoff *takeoff = &garden.takeoff;

	begin("planted.plot");
	draw(planted, COUNT(planted), (struct strolled){ .presses = 106, .typed = 17 }, 120);
	check_cells(24, 14, MIRROR_LEFT_RIGHT);
	check_row(1, "pbbbbbbbbppppppbbbbbbbbp");
	ck_assert_int_eq(block_value(&details->head, HEAD_NORTH)->as.number, 90 * MILLION);
	ck_assert_int_eq(block_value(&details->head, HEAD_SITE)->as.number, 52 * MILLION);
	ck_assert_uint_eq(details->around.houses.count, 1);
	ck_assert(place_equal(details->around.tap, (struct place){ 12, 14 }));
	/* Images of the rose and of the drift are there, and the header gets to both beds. */
	ck_assert_uint_eq(details->plants.items[1].specimen_count, 2);
	ck_assert_uint_eq(details->plants.items[0].drift_count, 2);
	ck_assert_int_eq(takeoff->planting.plants[1].count, 2);
	ck_assert_int_gt(takeoff->planting.plants[0].count, 8);
	ck_assert_int_eq(takeoff->watering.count, 2);
	for (int i = 0; i < 2; i++)
		ck_assert(takeoff->watering.list[i].is_reached);
	ck_assert_int_eq(takeoff->watering.list[0].within,
		takeoff->watering.list[1].within);
	/* Between the beds and the plan's sides the path is a foot wide. */
	check_snags("path-barrow path-barrow");
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("gardens");
	TCase *new = suite_case(suite, "new"), *changed = suite_case(suite, "changed");

	tcase_add_checked_fixture(new, NULL, teardown);
	tcase_add_test(new, an_herb_garden_takes_110_presses_at_most);
	tcase_add_test(new, a_metric_garden_takes_90_presses_at_most);
	tcase_add_test(new, a_planted_and_watered_garden_takes_120_presses_at_most);
	tcase_add_checked_fixture(changed, NULL, teardown);
	tcase_add_test(changed, changing_it_takes_60_presses_at_most);
	return suite;
}
