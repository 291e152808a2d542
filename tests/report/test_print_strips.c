/* Laying sheets, read back from the printed page: all that stands there, piece by piece, against
 * the runs of the takeoff. */
#include "report/text/print.h"
#include "support/beds.h"
#include "support/garden.h"
#include "support/runner.h"
#include "support/sample_gardens.h"

#include <stdlib.h>
#include <string.h>

enum { FIRST_COLUMN = 14, BLOCK_COLUMNS = 8, KINDS = 3, ODD = 0, EVEN = 1, CAP = 2 };
enum { BACK = 1, EXCHANGED = 2 };

static struct garden garden;
static struct text page;
static const char *at; /* of the page: the line to be read */

static void teardown(void)
{
	text_fini(&page);
	garden_fini(&garden);
}

static void print(void)
{
	garden_count(&garden);
	text_clear(&page);
	garden_print(&garden, &page, "strips.plot", 1u << PART_WALLS);
}

static bool is_metric(void)
{
	return plot_units(&garden.plot) == UNITS_METRIC;
}

/* ---- Lines ----------------------------------------------------------------------------------- */

static const char *line_end(const char *line)
{
	return line + strcspn(line, "\n");
}

static void next_line(void)
{
	at = line_end(at) + 1;
}

static bool line_has(const char *line, const char *words)
{
	const char *found = strstr(line, words);

	return found && found < line_end(line);
}

static bool line_begins(const char *words)
{
	return strncmp(at, words, strlen(words)) == 0;
}

/* "7 15/16 in", "3/4 in", "112.5 mm", "1.025 m"; without a unit as a tape is read. */
static double length_at(const char *c, const char **end)
{
	char *behind;
	double number = strtod(c, &behind);

	if (is_metric()) {
		bool is_metres = strncmp(behind, " m", 2) == 0 && behind[2] != 'm';

		*end = behind;
		return number * (is_metres ? 1e9 : 1e6);
	}
	if (*behind == '/') {
		number /= strtod(behind + 1, &behind);
	} else if (behind[0] == ' ' && strchr("0123456789", behind[1])) {
		char *over;
		double fraction = strtod(behind + 1, &over);

		if (*over == '/')
			number += (*c == '-' ? -1 : 1) * fraction / strtod(over + 1, &behind);
	}
	*end = behind;
	return number * NM_PER_INCH;
}

/* ---- The cut list ---------------------------------------------------------------------------- */

/* The place of the letter in the list of the index, as printed. */
static double place_of(int cutting, char letter)
{
	const char *c = strstr(page.bytes, "\nCutting");

	for (int i = 0; i <= cutting; i++)
		c = strstr(c, "\n  Bought ") + 1;
	c = strstr(c, "\n     Pieces");
	for (c++; strncmp(c, "  Blocks", 8) != 0; c = line_end(c) + 1) {
		char *end;

		if (c[2] != letter || c[3] != ' ')
			continue;
		for (strtol(c + 3, &end, 10); *end == ',';)
			strtol(end + 1, &end, 10);
		return length_at(end, &c);
	}
	ck_abort_msg("no row of %c", letter);
	return 0;
}

static int cutting_of(const struct wall *wall, int kind)
{
	const struct size *block = kind == CAP ? &wall->cap_block : &wall->block;
	const struct cuttings *cuttings = &garden.takeoff.cuttings;

	for (int i = 0; i < cuttings->count; i++)
		if ((cuttings->list[i].use == USE_CAP) == (kind == CAP) &&
		    cuttings->list[i].joint == wall->joint &&
		    memcmp(&cuttings->list[i].block, block, sizeof *block) == 0)
			return i;
	ck_abort_msg("no cut list");
	return 0;
}

/* ---- One strip ------------------------------------------------------------------------------- */

/* A run that has been read. */
enum { PIECES_MOST = 4000 };
struct read {
	double pieces[PIECES_MOST];
	int count;
	bool through[2];
};

/* What a strip should be, for the checks on the way. */
struct given {
	const struct wall *wall;
	const struct wall_run *run;
	int kind;
	nm block, origin, scale;
};

static double unit(void)
{
	return is_metric() ? (double)NM_PER_MM : (double)NM_PER_INCH / 16;
}

static bool is_near(double a, double b, double most)
{
	return a - b <= most && b - a <= most;
}

/* Whether a mark begins in the column on one of the lines below the row; it must be the place. */
static bool is_marked(const char *row, int column, double place)
{
	for (const char *line = line_end(row) + 1; !line_has(line, "|");
		line = line_end(line) + 1) {
		const char *mark = line + column, *end;

		if (strspn(line, " 0123456789/-") != (size_t)(line_end(line) - line) ||
		    line == line_end(line))
			break;
		bool is_fraction = mark[-2] != ' ' && mark[strspn(mark, "0123456789")] == '/';

		if (mark >= line_end(line) || *mark == ' ' || mark[-1] != ' ' || is_fraction)
			continue;
		ck_assert_msg(is_near(length_at(mark, &end), place, unit() / 2 + 1),
			"%.12s: not %.0f\n%.160s", mark, place, row);
		return true;
	}
	return false;
}

static nm joint_place(const struct wall_run *run, int piece)
{
	nm place = run->from;

	for (int i = 0; i < piece; i++)
		place += run->pieces[i];
	return place;
}

/* Reads the pieces of the row at `at`; the first bar of the row is the joint before piece
 * read->count. */
static void read_row(struct read *read, const struct given *given)
{
	const char *bar = strchr(at, '|');
	int moved = 0;

	for (bool is_first = true; bar; is_first = false) {
		int column = (int)(bar - at) - FIRST_COLUMN;
		double place = (double)joint_place(given->run, read->count);
		double columns = (place - (double)given->origin) * BLOCK_COLUMNS /
			(double)given->scale;
		const char *next = bar + 1 + strspn(bar + 1, "-*abcdefghijklmnopqrstuvwxyz"
			"ABCDEFGHIJKLMNOPQRSTUVWXYZ");
		char filling = bar[1];
		bool is_last = *next != '|';
		bool is_sawn = !is_last && filling != '-';

		if (is_first) /* rows further on begin further left, by whole columns */
			moved = (int)(columns + 0.5) - column;
		ck_assert_msg(is_near(columns, column + moved, 0.5 + 1e-6), "%.80s", at);
		bool marked = is_marked(at, column + FIRST_COLUMN, place);
		ck_assert_msg(marked || (!is_first && !is_last && !is_sawn && bar[-1] == '-'),
			"no mark at %d\n%.160s", column, at);
		if (is_last)
			return;
		for (const char *c = bar + 1; c < next; c++)
			ck_assert_int_eq(*c, filling);
		ck_assert_int_lt(read->count, given->run->piece_count);
		read->pieces[read->count++] = is_sawn ?
			place_of(cutting_of(given->wall, given->kind), filling) :
			(double)given->block;
		bar = next;
	}
}

static bool is_row(void)
{
	return line_has(at, "|") && !line_begins("  odd") && !line_begins("  even") &&
		!line_begins("  cap");
}

static void read_strip(struct read *read, const struct given *given)
{
	const char *row;

	read->count = 0;
	read->through[0] = line_has(at, "through|");
	ck_assert(read->through[0] || line_has(at, "butts|"));
	for (;;) {
		row = at;
		ck_assert_int_le(line_end(at) - at, PAGE_COLUMNS);
		read_row(read, given);
		for (next_line(); strspn(at, " 0123456789/-") == (size_t)(line_end(at) - at) &&
			at != line_end(at);)
			next_line();
		if (line_begins("              then ")) {
			const char *end;
			char *behind;
			int whole = (int)strtol(at + 19, &behind, 10);

			ck_assert_int_ge(whole, 1);
			ck_assert_int_eq(strncmp(behind, " whole, to ", 11), 0);
			for (int i = 0; i < whole; i++)
				read->pieces[read->count++] = (double)given->block;
			ck_assert(is_near(length_at(behind + 11, &end),
				(double)joint_place(given->run, read->count), unit() / 2 + 1));
			next_line();
		}
		if (!is_row())
			break;
	}
	read->through[1] = line_has(row, "|through");
	ck_assert(read->through[1] || line_has(row, "|butts"));
}

/* ---- One side -------------------------------------------------------------------------------- */

struct side_read {
	int loop, side, way;
};

static const struct wall_course *course(const struct wall *wall, int kind)
{
	return kind == ODD ? &wall->odd : kind == EVEN ? &wall->even : &wall->cap;
}

static int run_index(const struct wall *wall, const struct side_read *side)
{
	for (int i = 0; i < wall->odd.run_count; i++)
		if (wall->odd.runs[i].loop == side->loop && wall->odd.runs[i].side == side->side)
			return i;
	ck_abort_msg("no side %d of loop %d", side->side, side->loop);
	return 0;
}

static void faces(const struct loop *loop, int side, const char *words)
{
	const struct corner *from = &loop->corners[side],
		*to = &loop->corners[(side + 1) % loop->count];
	/* The bed is on the right of who walks from the one to the other. */
	const char *facing = to->x > from->x ? "up" : to->x < from->x ? "down" :
		to->y > from->y ? "right" : "left";

	ck_assert_msg(strncmp(words, facing, strlen(facing)) == 0, "%.20s: not %s", words, facing);
}

/* "Side 1 up, 3 down: 4 ft. Odd and even exchanged: hole 1 side 2 right.", over several lines. */
static int read_title(struct side_read *sides, const struct outline *outline)
{
	int count = 0, loop = 0, way = 0;
	const char *c = at;

	for (; !line_has(at, "|"); next_line())
		;
	while (c < at) {
		char *end;
		long number = strtol(c, &end, 10);

		if (strncmp(c, "hole ", 5) == 0 || strncmp(c, "Hole ", 5) == 0) {
			loop = (int)strtol(c + 5, &end, 10);
			ck_assert_int_eq(strncmp(end, " side ", 6), 0);
			c = end + 6;
		} else if (strncmp(c, "side ", 5) == 0 || strncmp(c, "Side ", 5) == 0) {
			loop = 0;
			c += 5;
		} else if (*c == '.') {
			way = 0;
			c++;
		} else if (strncmp(c, "From", 4) == 0) { /* the last corner */
			way |= BACK;
			c += 4;
		} else if (strncmp(c + 1, "dd", 2) == 0) { /* and even exchanged */
			way |= EXCHANGED;
			c += 3;
		} else if (end > c && *c != ' ' && *end == ' ' && strchr("udlr", end[1])) {
			faces(&outline->loops[loop], (int)number - 1, end + 1);
			sides[count++] = (struct side_read){ loop, (int)number - 1, way };
			c = end;
		} else {
			c++;
		}
	}
	return count;
}

static nm side_length(const struct outline *outline, const struct side_read *side)
{
	return outline_side(&outline->loops[side->loop], side->side) * garden.takeoff.survey.cell;
}

/* Where a run's end stands, from its corner inwards along the side: what goes through is flush with
 * an outer corner, and the wall's depth past an inner one; what butts is short of the one by it,
 * and flush with the other. */
static nm end_at(const struct corner *corner, bool is_through, nm depth)
{
	return (is_through ? 0 : depth) - (corner->reflex ? depth : 0);
}

/* The run that a side has by what was read of the group's first one. */
static void is_laid(const struct wall *wall, const struct side_read *side,
	const struct outline *outline, const struct read reads[KINDS])
{
	const struct loop *loop = &outline->loops[side->loop];
	nm length = side_length(outline, side);

	for (int kind = 0; kind < KINDS; kind++) {
		bool is_back = (side->way & BACK) != 0;
		int from = side->way & EXCHANGED && kind != CAP ? 1 - kind : kind;
		const struct read *read = &reads[from];
		const struct wall_course *laid = course(wall, kind);
		nm depth = kind == CAP ? wall->cap_block.across : wall->block.across;

		if (laid->run_count == 0)
			continue;
		const struct wall_run *run = &laid->runs[run_index(wall, side)];
		nm ends[2] = { run->from, length - run->from - run->length };

		ck_assert_msg(read->count == run->piece_count, "side %d: %d of %d pieces",
			side->side + 1, read->count, run->piece_count);
		for (int i = 0; i < read->count; i++)
			ck_assert_msg(is_near(read->pieces[is_back ? read->count - 1 - i : i],
				(double)run->pieces[i], unit() / 4 + 1), "side %d piece %d: %.0f",
				side->side + 1, i, read->pieces[i]);
		ck_assert_int_eq(!read->through[0] + !read->through[1], run->butts);
		for (int end = 0; end < 2; end++)
			ck_assert_int_eq(ends[end], end_at(&loop->corners[(side->side + end) %
				loop->count], read->through[end ^ is_back], depth));
	}
}

/* What becomes of a joint more or fewer. */
static void skip_joint(void)
{
	if (line_begins("              One sawn piece ") || line_begins("              Joints ") ||
	    (line_begins("              ") && line_has(at, " stays open.")))
		next_line();
}

/* Reads the strips of one group of sides; returns how many sides it has. */
static int read_group(const struct wall *wall, const struct outline *outline, bool *has_side)
{
	static struct read reads[KINDS];
	static struct side_read sides[PIECES_MOST];
	static const char *const names[KINDS] = { "  odd  ", "  even ", "  cap  " };
	int count = read_title(sides, outline);
	nm cap = wall->has_cap ? wall->cap_block.along : wall->block.along, origin = 0;
	nm shorter = cap < wall->block.along ? cap : wall->block.along;
	bool is_shared = cap <= 3 * wall->block.along && wall->block.along <= 3 * cap;
	int index;

	ck_assert_int_ge(count, 1);
	ck_assert_int_eq(sides[0].way, 0);
	index = run_index(wall, &sides[0]);
	for (int kind = 0; kind < KINDS; kind++) {
		const struct wall_course *laid = course(wall, kind);

		if (laid->run_count > 0 && laid->runs[index].from < origin)
			origin = laid->runs[index].from;
	}
	for (int kind = 0; kind < KINDS; kind++) {
		nm block = kind == CAP ? cap : wall->block.along;
		struct given given = { wall, NULL, kind, block, origin,
			is_shared ? shorter : block };

		if (course(wall, kind)->run_count == 0)
			continue;
		ck_assert_msg(line_begins(names[kind]), "%.40s", at);
		given.run = &course(wall, kind)->runs[index];
		read_strip(&reads[kind], &given);
		skip_joint();
	}
	for (int i = 0; i < count; i++) {
		ck_assert_int_eq(side_length(outline, &sides[i]), side_length(outline, &sides[0]));
		is_laid(wall, &sides[i], outline, reads);
		ck_assert(!has_side[run_index(wall, &sides[i])]);
		has_side[run_index(wall, &sides[i])] = true;
	}
	return count;
}

/* ---- All sheets ------------------------------------------------------------------------------ */

static const struct wall *wall_named(const char *id)
{
	const struct takeoff *takeoff = &garden.takeoff;

	for (int i = 0; i < takeoff->walls.count; i++) {
		char name[REGION_NAME_MOST];
		const struct wall *wall = &takeoff->walls.list[i];

		survey_region_name(&takeoff->survey.regions[wall->region], name);
		if (strncmp(id, name, strlen(name)) == 0 && strchr(" ,:\n", id[strlen(name)]))
			return wall;
	}
	ck_abort_msg("no wall: %.20s", id);
	return NULL;
}

static void read_sheet(void)
{
	const struct wall *wall = wall_named(at);
	struct arena arena = ARENA_EMPTY;
	struct outline outline;
	bool *has_side = calloc((size_t)wall->odd.run_count, sizeof *has_side);
	int count = 0;

	outline_trace(&outline, &arena, &garden.plot, &garden.takeoff.survey, wall->region);
	while (*at != '\n') {
		if (line_begins("  Side ") || line_begins("  Hole "))
			count += read_group(wall, &outline, has_side);
		else
			next_line();
	}
	ck_assert_int_eq(count, wall->odd.run_count);
	free(has_side);
	arena_clear(&arena);
}

/* Returns how many sheets there are: one for each bed that is not another's image. */
static int read_sheets(void)
{
	int count = 0;

	at = strstr(page.bytes, "\nLaying sheets\n-");
	ck_assert_ptr_nonnull(at);
	for (at++; *at != '\n';)
		next_line();
	for (next_line(); *at == 'B'; next_line(), count++)
		read_sheet();
	ck_assert_int_eq(strncmp(at, "Cutting", 7), 0);
	return count;
}

/* ---- By law ---------------------------------------------------------------------------------- */

START_TEST(sheets_of_the_samples_read_back_are_the_takeoff)
{
	char path[80];

	snprintf(path, sizeof path, "plots/%s.plot", sample_gardens[_i]);
	garden_file(&garden, path);
	print();
	ck_assert_int_ge(read_sheets(), 1);
}
END_TEST

static void set_size(struct plot *plot, enum attribute attribute, const struct size *size)
{
	char value[120];

	snprintf(value, sizeof value, "%.6f mm x %.6f mm x %.6f mm", (double)size->along / 1e6,
		(double)size->across / 1e6, (double)size->up / 1e6);
	plot_set(plot, 'b', attribute, value);
}

START_TEST(sheets_of_random_beds_read_back_are_the_takeoff)
{
	int sheets = 0, tries = runner_count(60, 1000);

	for (int seed = 1; seed <= tries; seed++) {
		struct random random = { (uint64_t)seed };
		struct size block = beds_random_block(&random), cap = beds_random_block(&random);
		char courses[8];

		garden = (struct garden){ .arena = ARENA_EMPTY };
		beds_at_random(&garden.plot, &random, random_between(&random, 4, 12), 3);
		set_size(&garden.plot, BED_BLOCK, &block);
		snprintf(courses, sizeof courses, "%d", random_between(&random, 1, 5));
		plot_set(&garden.plot, 'b', BED_COURSES, courses);
		if (seed % 3 == 0)
			set_size(&garden.plot, BED_CAP, &cap);
		if (seed % 2)
			plot_set(&garden.plot, 0, HEAD_UNITS, "metric");
		if (seed % 5 == 0)
			plot_set(&garden.plot, 'b', BED_JOINT, "3/8 in");
		print();
		if (garden.takeoff.walls.count > 0)
			sheets += read_sheets();
		teardown();
		page = TEXT_EMPTY;
	}
	ck_assert_int_ge(sheets, tries / 2);
}
END_TEST

START_TEST(a_great_bed_is_told_in_few_rows_and_reads_back)
{
	garden_rectangle(&garden, 'b', 1500, 12);
	plot_set(&garden.plot, 'b', BED_BLOCK, "15 in x 7 in x 6 in");
	print();
	ck_assert_int_eq(read_sheets(), 1);
	ck_assert_ptr_nonnull(strstr(page.bytes, "              then "));
	const char *sheets = strstr(page.bytes, "\nLaying sheets");

	ck_assert_int_lt(strstr(page.bytes, "\nCutting") - sheets, 4000);
}
END_TEST

/* ---- As it stands ---------------------------------------------------------------------------- */

static void has(const char *words)
{
	ck_assert_msg(strstr(page.bytes, words), "not there: %s", words);
}

START_TEST(a_square_bed_with_a_cut_is_drawn_once_for_all_its_sides)
{
	garden_file(&garden, "plots/court.plot");
	print();
	has("\nB1 and B2: 2 beds, alike piece for piece\n"
		"  4 courses of block 12 in x 8 in x 4 in, each 30.0 lb. One bed takes 48 whole\n"
		"  and 8 sawn (a 7 7/8 in), 1,600 lb.\n"
		"  Side 1 up, 3 down: 4 ft. Odd and even exchanged: 2 right, 4 left.\n"
		"  odd  through|-------|-------|-------|-------|through\n"
		"              0       12      24      36      48\n"
		"  even        butts|-------|aaaaa|-------|butts\n"
		"                   8       20    28      40\n\nCutting\n");
}
END_TEST

/* One side's length is other than the next one's: two groups, 12 lines with title and summary. */
START_TEST(a_plain_bed_takes_12_lines)
{
	garden_rectangle(&garden, 'b', 8, 4);
	print();
	has("\nB1\n"
		"  3 courses of block 16 in x 8 in x 6 in, each 60.0 lb. It takes 48 whole,\n"
		"  2,880 lb.\n"
		"  Side 1 up, 3 down: 8 ft.\n"
		"  odd  through|-------|-------|-------|-------|-------|-------|through\n"
		"              0       16      32      48      64      80      96\n"
		"  even       butts|-------|-------|-------|-------|-------|butts\n"
		"                  8       24      40      56      72      88\n"
		"  Side 2 right, 4 left: 4 ft.\n"
		"  odd        butts|-------|-------|butts\n"
		"                  8       24      40\n"
		"  even through|-------|-------|-------|through\n"
		"              0       16      32      48\n\n");
	ck_assert_ptr_null(strstr(page.bytes, "with a minus"));
}
END_TEST

/* 84 in less both depths are four blocks and 4 in, less one of them four blocks and 12 in. */
START_TEST(a_bed_names_the_letters_that_it_has_and_no_others)
{
	garden_rows(&garden, (const char *[]){
		"bbbbbbb.bbbbbbb", "bbbbbbb.bbbbbbb", "bbbbbbb.bbbbbbb", "bbbbbbb.bbbbbbb",
		"bbbbbbb........", "bbbbbbb........", NULL });
	print();
	has(" (a 11 7/8 in),");
	has(" (b 3 7/8 in),");
	has("\n  a       6  12 in  11 7/8 in  B1: 2 each on side 1 odd, ");
	has("\n  b       6   4 in   3 7/8 in  B2: 2 each on side 1 odd, ");
}
END_TEST

START_TEST(a_run_with_a_joint_more_or_fewer_than_pieces_says_what_becomes_of_it)
{
	/* 8 x 4 ft of 16 x 8 in block, of which 3/8 in is joint: through at both ends six blocks
	 * with five joints, between them two blocks with three. */
	garden_rectangle(&garden, 'b', 8, 4);
	plot_set(&garden.plot, 'b', BED_JOINT, "3/8 in");
	print();
	has("each 60.0 lb. Of its length 3/8 in is\n  joint. It takes");
	has("\n  even through|-------|-------|-------|through\n"
		"              0       16      32      48\n"
		"              Joints wider, 3/8 in in all.\n");
	has("\n  odd        butts|-------|-------|butts\n"
		"                  8       24      40\n"
		"              Joints narrower, 3/8 in in all.\n");
	garden_fini(&garden);
	/* 7 x 4 ft: 84 in are five blocks and 4 in, 68 in four and 4 in. */
	garden_rectangle(&garden, 'b', 7, 4);
	plot_set(&garden.plot, 'b', BED_JOINT, "3/8 in");
	print();
	has("\n  odd        butts|a|-------|-------|-------|-------|butts\n"
		"                  8 12      28      44      60      76\n"
		"              One sawn piece 3/8 in shorter.\n"
		"  even through|-------|-------|-------|-------|a|-------|through\n"
		"              0       16      32      48      64        84\n"
		"                                                68\n"
		"              One sawn piece 3/8 in longer.\n");
	has("15 5/8 in of stone.");
	garden_fini(&garden);
	garden_rectangle(&garden, 'b', 8, 4);
	print();
	ck_assert_ptr_null(strstr(page.bytes, "Joints wider"));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("print_strips");
	TCase *law = suite_case(suite, "law"), *words = suite_case(suite, "words");

	tcase_add_checked_fixture(law, NULL, teardown);
	tcase_set_timeout(law, runner_count(60, 600));
	tcase_add_loop_test(law, sheets_of_the_samples_read_back_are_the_takeoff, 0,
		SAMPLE_GARDENS);
	tcase_add_test(law, sheets_of_random_beds_read_back_are_the_takeoff);
	tcase_add_test(law, a_great_bed_is_told_in_few_rows_and_reads_back);

	tcase_add_checked_fixture(words, NULL, teardown);
	tcase_add_test(words, a_square_bed_with_a_cut_is_drawn_once_for_all_its_sides);
	tcase_add_test(words, a_plain_bed_takes_12_lines);
	tcase_add_test(words, a_bed_names_the_letters_that_it_has_and_no_others);
	tcase_add_test(words, a_run_with_a_joint_more_or_fewer_than_pieces_says_what_becomes_of_it);
	return suite;
}
