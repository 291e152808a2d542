/* Papers of gardens that have a hundred of a thing, which are all named, or one more. */
#include "base/date.h"
#include "report/text/print.h"
#include "support/around.h"
#include "support/garden.h"
#include "support/golden.h"
#include "support/runner.h"
#include "support/shapes.h"

#include <stdio.h>
#include <string.h>

static struct garden garden;
static struct text paper;

static void setup(void)
{
	paper = TEXT_EMPTY;
}

static void teardown(void)
{
	text_fini(&paper);
	garden_fini(&garden);
}

/* ---- Gardens --------------------------------------------------------------------------------- */

enum { ROWS_MOST = 140, COLUMNS_MOST = 4 * (NAMED_MOST + 1) };

/* Ground to be drawn on, all of it open. */
struct canvas {
	char rows[ROWS_MOST][COLUMNS_MOST + 1];
	int columns, height;
};

static struct canvas canvas_of(int columns, int height)
{
	struct canvas canvas = { .columns = columns, .height = height };

	for (int y = 0; y < height; y++)
		memset(canvas.rows[y], '.', (size_t)columns);
	return canvas;
}

static void draw(const struct canvas *canvas)
{
	const char *rows[ROWS_MOST + 1] = { NULL };

	for (int y = 0; y < canvas->height; y++)
		rows[y] = canvas->rows[y];
	garden_rows(&garden, rows);
}

/* A bed on drip lines, a rose beside it and a path below, and a path from top to bottom that the
 * header goes under, over and over: near a line that is there and over one to lay. */
static void along_lines(int count)
{
	struct canvas canvas = canvas_of(4 * count, 6);
	struct text lines = TEXT_EMPTY;

	for (int i = 0; i < count; i++) {
		canvas.rows[0][4 * i + 3] = 'b';
		canvas.rows[4][4 * i + 3] = canvas.rows[5][4 * i + 3] = 'p';
		for (int y = 0; y < canvas.height; y++)
			canvas.rows[y][4 * i + 1] = 'q';
	}
	draw(&canvas);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	text_print(&lines, "plant r \"Rose\"\n  spacing 6 in\n");
	for (int i = 0; i < count; i++)
		text_print(&lines, "  at %d,0\n", 4 * i + 2);
	text_print(&lines, "fence \"Rail\"\n  section 2 ft\n  run 0,1 %d,1\n", 2 * (count - 1));
	plot_add_lines(&garden.plot, lines.bytes);
	text_clear(&lines);
	text_print(&lines, "service gas \"Gas\" existing\n  line 0,0 %d,0\n"
		"service power \"Lamp\" to-lay\n  line 0,5 %d,5\ntap 0,3\ndrop 0,3\n", 4 * count,
		4 * count);
	around_add(&garden.plot, lines.bytes);
	text_fini(&lines);
}

/* Paths and lawns by turns on low ground along a house. */
static void low_along_a_house(int count)
{
	struct canvas canvas = canvas_of(count, 1);
	struct text lines = TEXT_EMPTY;

	for (int x = 0; x < count; x++)
		canvas.rows[0][x] = x % 2 ? 'l' : 'p';
	draw(&canvas);
	text_print(&lines, "house \"Ours\" 20 ft\n  from 0,1 to %d,3\ndrop 0,0\n", count - 1);
	plot_add_lines(&garden.plot, "finish 0,0 0 in\nfall 2.5 % towards 0\n");
	levels_init(&garden.plot.details.levels, NM_PER_FOOT, count + 1, 2);
	for (int i = 0; i < 2 * (count + 1); i++)
		garden.plot.details.levels.drops[i] = (20 + i % 3) * NM_PER_INCH;
	around_add(&garden.plot, lines.bytes);
	text_fini(&lines);
}

/* Beds behind a house, of which each takes nearly all of the supply. */
static void behind_a_house(int count)
{
	struct canvas canvas = canvas_of(2 * count, 4);
	struct text lines = TEXT_EMPTY;

	for (int i = 0; i < count; i++)
		canvas.rows[0][2 * i] = 'b';
	draw(&canvas);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	plot_set(&garden.plot, 0, ALLOW_SUPPLY, "1 gal/h");
	text_print(&lines, "house \"Ours\" 20 ft\n  from -40,1 to %d,2\ntap 0,4\n",
		2 * count + 40);
	around_add(&garden.plot, lines.bytes);
	text_fini(&lines);
}

/* Beds of one zone: those that are narrow get more than they ask for. */
static void in_one_zone(int count)
{
	struct canvas canvas = canvas_of(2 * count + 8, 8);

	for (int i = 0; i < count; i++)
		canvas.rows[7][2 * i] = 'b';
	for (int y = 0; y < 6; y++)
		memset(canvas.rows[y], 'c', 8);
	draw(&canvas);
	for (const char *letter = "bc"; *letter; letter++) {
		plot_set(&garden.plot, *letter, BED_BUILD, "level");
		plot_set(&garden.plot, *letter, BED_WATER, "drip");
	}
	plot_set(&garden.plot, 'c', BED_DRIP_ROW, "2 ft");
	plot_set(&garden.plot, 0, ALLOW_SUPPLY, "900 gal/h");
}

/* Pairs of beds of as many sizes: with as many ties, and levels. */
static void in_pairs(int count)
{
	struct canvas canvas = canvas_of(2 * count + 1, 2 * count);
	struct text lines = TEXT_EMPTY;

	for (int i = 0; i < count; i++) {
		memset(canvas.rows[2 * i], 'b', (size_t)(i + 1));
		memset(canvas.rows[2 * i] + 2 * count - i, 'b', (size_t)(i + 1));
		text_print(&lines, "tie %d,0 \"Pier %d\" 9 ft\n", i, i + 1);
	}
	draw(&canvas);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_add_lines(&garden.plot, "finish 0,0 3 in\nfall 1 % towards 90\n");
	around_add(&garden.plot, lines.bytes);
	text_fini(&lines);
}

/* A bed too wide for a sheet, of plants with long names in it. */
static void in_a_wide_bed(int count)
{
	struct canvas canvas = canvas_of(count, 3);
	static const char plants[] =
		"plant t \"Thyme that creeps along the front of a bed\"\n  spacing 1 ft\n"
		"  drift b front\n"
		"plant s \"Sage that stands along the back of a bed\"\n  spacing 2 ft\n"
		"  drift b back\n"
		"plant r \"Rose that climbs on nothing\"\n  spacing 1 ft\n  at 2,1\n  at 40,1\n";

	for (int y = 0; y < canvas.height; y++)
		memset(canvas.rows[y], 'b', (size_t)count);
	draw(&canvas);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	plot_add_lines(&garden.plot, plants);
	around_add(&garden.plot, "tap 0,3\n");
}

/* Plants of each month, in a bed on drip lines and in one that is not. */
static void of_each_month(int count)
{
	static const char *const months[] = { "january", "february", "march", "april", "may",
		"june", "july", "august", "september", "october", "november", "december" };
	struct canvas canvas = canvas_of(2 * count + 1, 1);
	struct text lines = TEXT_EMPTY;

	memset(canvas.rows[0], 'b', (size_t)count);
	memset(canvas.rows[0] + count + 1, 'c', (size_t)count);
	draw(&canvas);
	for (const char *letter = "bc"; *letter; letter++)
		plot_set(&garden.plot, *letter, BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_WATER, "drip");
	for (int i = 0; i < count; i++)
		text_print(&lines, "plant %c \"Of %s\"\n  spacing 1 ft\n  plant-from %s\n"
			"  at %d,0\n  at %d,0\n", 'd' + i, months[i], months[i], i,
			count + 1 + i);
	plot_add_lines(&garden.plot, lines.bytes);
	text_fini(&lines);
}

/* Beds far apart: as many sheets as a takeoff has, three by three, and the same two by two. */
static void far_apart(int count)
{
	struct canvas canvas = canvas_of(count, count * 2 / 3);

	for (int y = 2; y + 4 < canvas.height; y += 20)
		for (int x = y % 3; x + 8 < count; x += 31)
			for (int row = 0; row < 4; row++)
				memset(canvas.rows[y + row] + x, 'b', 6);
	draw(&canvas);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
}

/* One of the plots that are hardest, small. */
static void shaped(void (*shape)(struct plot *plot, int size), int size)
{
	garden = (struct garden){ .arena = ARENA_EMPTY };
	shape(&garden.plot, size);
}

static void small_beds(int size)
{
	shaped(shape_small_beds, size);
}

static void checkerboard(int size)
{
	shaped(shape_checkerboard, size);
}

static void spiral(int size)
{
	shaped(shape_spiral, size);
}

static void sieve(int size)
{
	shaped(shape_sieve, size);
}

static void comb(int size)
{
	shaped(shape_comb, size);
}

/* A fence in stairs, of so many legs of one cell, down ground that falls below each of them. */
static void stairs(int count)
{
	enum { LEGS_OF_RUN = 60 };
	struct text lines = TEXT_EMPTY;
	int across = 0, down = 0;

	garden_rectangle(&garden, '.', count, count);
	plot_set(&garden.plot, 0, ALLOW_FENCE_GAP, "1 in");
	text_print(&lines, "fence \"Stairs\"\n");
	for (int leg = 0; leg < count; leg++) {
		if (leg % LEGS_OF_RUN == 0)
			text_print(&lines, "%s  run %d,%d", leg > 0 ? "\n" : "", across, down);
		across += leg % 2 == 0;
		down += leg % 2;
		text_print(&lines, " %d,%d", across, down);
	}
	text_print(&lines, "\nlevels %d ft\n  0 ft, 16 ft\n  16 ft, 32 ft\n", count);
	plot_add_lines(&garden.plot, lines.bytes);
	text_fini(&lines);
}

/* Fences that are alike, and a deeper one. */
static void fenced(int count)
{
	struct text lines = TEXT_EMPTY;

	garden_rectangle(&garden, '.', 12, 3 * count);
	for (int i = 0; i < count; i++)
		text_print(&lines, "fence \"Rail %d\"\n%s  run 1,%d 11,%d\n  gate 2,%d 6,%d\n",
			i + 1, i == 1 ? "  depth 3 ft\n" : "", 3 * i + 1, 3 * i + 1, 3 * i + 1,
			3 * i + 1);
	plot_add_lines(&garden.plot, lines.bytes);
	text_fini(&lines);
}

/* ---- Papers ---------------------------------------------------------------------------------- */

static const struct {
	const char *name;
	void (*draw)(int count);
	int count;
	unsigned parts;
} gardens[] = {
	{ "lines", along_lines, NAMED_MOST, 1u << PART_SERVICES | 1u << PART_WATERING |
		1u << PART_PROGRAMME },
	{ "lines", along_lines, NAMED_MOST + 1, 1u << PART_SERVICES | 1u << PART_WATERING |
		1u << PART_PROGRAMME },
	{ "low", low_along_a_house, NAMED_MOST, 1u << PART_LEVELS | 1u << PART_PROGRAMME },
	{ "low", low_along_a_house, NAMED_MOST + 1, 1u << PART_LEVELS | 1u << PART_PROGRAMME },
	{ "house", behind_a_house, NAMED_MOST, 1u << PART_WATERING },
	{ "house", behind_a_house, NAMED_MOST + 1, 1u << PART_WATERING },
	{ "zone", in_one_zone, NAMED_MOST - 1, 1u << PART_WATERING },
	{ "zone", in_one_zone, NAMED_MOST, 1u << PART_WATERING },
	{ "zone", in_one_zone, NAMED_MOST + 1, 1u << PART_WATERING },
	{ "pairs", in_pairs, 20, 1u << PART_SETOUT },
	{ "pairs", in_pairs, 30, 1u << PART_SETOUT },
	{ "pairs", in_pairs, 32, 1u << PART_SETOUT },
	{ "wide-bed", in_a_wide_bed, 45, 1u << PART_PLANTING | 1u << PART_WATERING },
	{ "months", of_each_month, MONTHS, 1u << PART_PLANTING },
	{ "apart", far_apart, 100, 1u << PART_FRONT },
	{ "apart", far_apart, 200, 1u << PART_FRONT },
	{ "small-beds", small_beds, 240, PARTS_ALL },
	{ "small-beds", small_beds, 264, PARTS_ALL },
	{ "checkerboard", checkerboard, 7, PARTS_ALL },
	{ "checkerboard", checkerboard, 15, PARTS_ALL },
	{ "spiral", spiral, 20, PARTS_ALL },
	{ "sieve", sieve, 9, PARTS_ALL },
	{ "comb", comb, 14, PARTS_ALL },
	{ "fences", fenced, 2, PARTS_ALL },
	{ "fences", fenced, 4, 1u << PART_DIG | 1u << PART_FRONT },
	{ "stairs", stairs, NAMED_MOST, 1u << PART_FENCE },
	{ "stairs", stairs, NAMED_MOST + 1, 1u << PART_FENCE },
};
enum { GARDENS = sizeof gardens / sizeof *gardens };

START_TEST(papers_of_many_print_as_they_did)
{
	char golden[60];

	gardens[_i].draw(gardens[_i].count);
	garden_count(&garden);
	garden_print(&garden, &paper, "many.plot", gardens[_i].parts);
	snprintf(golden, sizeof golden, "many-%s-%d.txt", gardens[_i].name, gardens[_i].count);
	golden_check(golden, paper.bytes);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("golden many");
	TCase *papers = suite_case(suite, "papers");

	tcase_add_checked_fixture(papers, setup, teardown);
	tcase_add_loop_test(papers, papers_of_many_print_as_they_did, 0, GARDENS);
	return suite;
}
