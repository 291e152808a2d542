#include "report/text/print.h"
#include "base/hash.h"
#include "base/memory.h"
#include "base/show.h"
#include "base/stop.h"

#include <math.h>
#include <stdlib.h>

/* ---- One sheet ------------------------------------------------------------------------------- */

/* What a run with a joint more or fewer than pieces has to say: the stone is a joint longer or
 * shorter than places are. */
static const char *joint_words(const struct report *report, const struct wall_run *run,
	const struct wall *wall, nm block)
{
	bool is_fewer = run->butts == 0, is_cut = false;
	const char *joint = word_inches(report, wall->joint);

	if (wall->joint == 0 || run->butts == 1)
		return "";
	for (int i = 0; i < run->piece_count; i++)
		is_cut = is_cut || run->pieces[i] < block;
	if (is_cut)
		return say(report, "; one cut piece %s %s", joint, is_fewer ? "longer" : "shorter");
	if (run->piece_count == 1 && is_fewer)
		return say(report, "; %s stays open", joint);
	return say(report, "; joints %s, %s in all", is_fewer ? "wider" : "narrower", joint);
}

/* "5 whole, 10 5/8 in": equal neighbours joined. Marks along the side are rounded, not pieces, so
 * that those add up as they are shown. */
static const char *pieces_words(const struct report *report, const struct wall_run *run, nm block)
{
	struct text words = TEXT_EMPTY;
	nm at = run->from;
	int alike;

	for (int i = 0; i < run->piece_count; i += alike) {
		nm piece = run->pieces[i], end = at + piece;
		nm shown = show_piece_rounded(end, report->units) -
			show_piece_rounded(at, report->units);

		for (alike = 1; i + alike < run->piece_count && run->pieces[i + alike] == piece &&
			(piece == block || show_piece_rounded(end + piece, report->units) ==
			show_piece_rounded(end, report->units) + shown); alike++)
			end += piece;
		at = end;
		text_add(&words, i > 0 ? ", " : "");
		if (piece == block)
			text_add(&words, word_count(report, alike, "whole", "whole"));
		if (piece != block && alike > 1)
			text_print(&words, "%d%cof%c", alike, PAGE_TIE, PAGE_TIE);
		if (piece != block)
			text_add(&words, word_piece(report, shown));
	}
	return say_text(report, &words);
}

/* The side's number and direction on the plan. */
static const char *side_words(const struct report *report, const struct loop *loop,
	const struct wall_run *run)
{
	const struct corner *from = &loop->corners[run->side];
	const struct corner *to = &loop->corners[(run->side + 1) % loop->count];
	const char *hole = run->loop > 0 ? say(report, "hole %d, ", run->loop) : "";

	return say(report, "%s%d %s", hole, run->side + 1, to->x > from->x ? "right" :
		to->x < from->x ? "left" : to->y > from->y ? "down" : "up");
}

/* A wall's runs as rows: side by side, of each side the odd and the even courses and the cap. */
struct sides {
	struct table table; /* first */
	const struct report *report;
	const struct wall *wall;
	const struct outline *outline;
	int side, course; /* of the next row */
};
enum { COURSES_SHOWN = 3 };

static void fill_cells(const struct sides *sides, const char *name, const struct wall_run *run,
	const char *cells[])
{
	const struct report *report = sides->report;
	const struct loop *loop = &sides->outline->loops[run->loop];
	bool is_first = sides->course == 0;

	cells[0] = is_first ? side_words(report, loop, run) : "";
	cells[1] = is_first ? plain_length(report, outline_side(loop, run->side) *
		report->takeoff->survey.cell) : "";
	cells[2] = name;
	cells[3] = plain_piece(report, run->from);
}

static bool next_run(struct table *table, const char *cells[])
{
	struct sides *sides = (struct sides *)table;
	const struct wall *wall = sides->wall;
	const struct {
		const char *name;
		const struct wall_course *course;
		nm block;
	} shown[COURSES_SHOWN] = {
		{ "odd", &wall->odd, wall->block.along },
		{ "even", &wall->even, wall->block.along },
		{ "cap", &wall->cap, wall->cap_block.along },
	};

	arena_clear(sides->report->words);
	for (; sides->side < wall->odd.run_count; sides->side++, sides->course = 0) {
		while (sides->course < COURSES_SHOWN && shown[sides->course].course->run_count == 0)
			sides->course++;
		if (sides->course < COURSES_SHOWN) {
			const struct wall_run *run =
				&shown[sides->course].course->runs[sides->side];
			nm block = shown[sides->course].block;

			fill_cells(sides, shown[sides->course].name, run, cells);
			cells[4] = say(sides->report, "%s%s",
				pieces_words(sides->report, run, block),
				joint_words(sides->report, run, wall, block));
			sides->course++;
			return true;
		}
	}
	sides->side = 0;
	return false;
}

static void print_sides(const struct report *report, const struct wall *wall)
{
	static const struct table_column columns[] = {
		{ "Side", COLUMN_LEFT }, { "Length", COLUMN_RIGHT }, { "Course", COLUMN_LEFT },
		{ "Starts at", COLUMN_RIGHT }, { "Pieces in order", COLUMN_WRAPS },
	};
	struct arena arena = ARENA_EMPTY;
	struct outline outline;
	struct sides sides = { .table = { columns, 5, 2, next_run, 0 }, .report = report,
		.wall = wall, .outline = &outline };

	outline_trace(&outline, &arena, report->plot, &report->takeoff->survey, wall->region);
	table_print(&sides.table, report->out);
	arena_clear(&arena);
}

/* "17 whole and 4 cut". */
static const char *blocks_words(const struct report *report, int64_t whole, int64_t cut)
{
	const char *words = word_count(report, whole, "whole", "whole");

	return cut == 0 ? words : say(report, "%s and %s", words,
		word_count(report, cut, "cut", "cut"));
}

static const char *course_words(const struct report *report, const char *name,
	const struct wall_course *course)
{
	return say(report, "%s %s", name, blocks_words(report, course->whole, course->cut));
}

/* Counts of odd and even courses, as one where they are equal. */
static const char *courses_words(const struct report *report, const struct wall *wall)
{
	if (wall->courses == 1)
		return course_words(report, "The course", &wall->odd);
	if (wall->odd.whole == wall->even.whole && wall->odd.cut == wall->even.cut)
		return course_words(report, "Each course", &wall->odd);
	return say(report, "%s%s", course_words(report, "Each odd course", &wall->odd),
		course_words(report, "; each even course", &wall->even));
}

/* ---- A sheet for beds that are images of one another ----------------------------------------- */

static const char *const turn_words[TURNS] = {
	[TURN_LEFT_RIGHT] = "left for right",
	[TURN_TOP_BOTTOM] = "top for bottom",
	[TURN_HALF] = "turned half round",
	[TURN_QUARTER] = "turned a quarter to the right",
	[TURN_QUARTER_BACK] = "turned a quarter to the left",
	[TURN_FALLING] = "turned a quarter to the right, then left for right",
	[TURN_RISING] = "turned a quarter to the right, then top for bottom",
};

/* Walls with the same pieces, turned in the same way. */
static bool are_turned_alike(const void *a, const void *b, const void *context)
{
	const struct wall *one = a, *other = b;

	(void)context;
	return one->like == other->like && one->turn == other->turn;
}

static uint64_t hash_turned(const void *item, const void *context)
{
	const struct wall *wall = item;
	const int values[] = { wall->like, (int)wall->turn };

	(void)context;
	return hash_bytes(HASH_EMPTY, values, sizeof values);
}

/* Groups of walls, and of each that has a sheet those that are its images, by turn: numbers from
 * 1; 0: none. */
struct sheets {
	const struct walls *walls;
	struct groups groups;
	int (*images)[TURNS];
	bool has_images;
};

static struct sheets make_sheets(const struct walls *walls)
{
	struct sheets sheets = { .walls = walls, .groups = groups_make(walls->list, walls->count,
		sizeof *walls->list, &(struct alike){ are_turned_alike, hash_turned, NULL }) };

	sheets.images = memory_new((size_t)sheets.groups.count, sizeof *sheets.images);
	for (int i = 0; i < sheets.groups.count && !stop_asked(); i++) {
		const struct wall *wall = &walls->list[sheets.groups.list[i].members[0]];
		const struct wall *like = walls_find(walls, wall->like);

		if (wall->turn == TURN_NONE)
			continue;
		sheets.images[sheets.groups.of[like - walls->list]][wall->turn] = i + 1;
		sheets.has_images = true;
	}
	return sheets;
}

/* "B2 and B6: B1, left for right." for each image; false where there is none. */
static bool print_images(const struct report *report, const struct sheets *sheets, int at)
{
	const struct walls *walls = sheets->walls;
	const struct wall *wall = &walls->list[sheets->groups.list[at].members[0]];
	bool has_any = false;

	for (int turn = 0; turn < TURNS; turn++) {
		int image = sheets->images[at][turn];

		if (image == 0)
			continue;
		has_any = true;
		print_lines(report, 2, 4, "%s: %s, %s.", group_words(report, &wall_table,
			walls->list, &sheets->groups.list[image - 1]),
			plain_region(report, wall->region), turn_words[turn]);
	}
	return has_any;
}

static void print_sheet(const struct report *report, const struct sheets *sheets, int at)
{
	const struct group *group = &sheets->groups.list[at];
	const struct wall *wall = &sheets->walls->list[group->members[0]];
	bool is_for_several;

	print_blank(report);
	print_lines(report, 0, 2, "%s", group_title(report, &wall_table, sheets->walls->list, group,
		", alike piece for piece"));
	is_for_several = print_images(report, sheets, at) || group->count > 1;
	print_lines(report, 2, 2, "%s of block %s, each %s%s%s.%s",
		word_count(report, wall->courses, "course", "courses"),
		word_size(report, &wall->block), plain_weight(report, wall->block_weight),
		wall->has_cap ? "; cap " : "",
		wall->has_cap ? word_size(report, &wall->cap_block) : "",
		wall->joint == 0 ? "" : say(report, " Of a block's length %s is joint.",
		word_inches(report, wall->joint)));
	print_lines(report, 2, 2, "%s%s. %s wall takes %s%s: %s.", courses_words(report, wall),
		wall->has_cap ? course_words(report, "; the cap", &wall->cap) : "",
		is_for_several ? "One bed's" : "The",
		blocks_words(report, wall->whole_blocks, wall->cut_pieces),
		wall->has_cap ? ", without the cap" : "", plain_weight(report, wall->weight));
	print_sides(report, wall);
}

static bool has_minus(const struct wall_course *course)
{
	for (int i = 0; i < course->run_count; i++)
		if (course->runs[i].from < 0)
			return true;
	return false;
}

/* Whether any run begins before its side does, as it can at an inner corner. */
static bool begins_before_a_corner(const struct walls *walls)
{
	for (int i = 0; i < walls->count && !stop_asked(); i++) {
		const struct wall *wall = &walls->list[i];

		if (has_minus(&wall->odd) || has_minus(&wall->even) || has_minus(&wall->cap))
			return true;
	}
	return false;
}

void print_walls(const struct report *report)
{
	const struct walls *walls = &report->takeoff->walls;
	struct sheets sheets;

	if (walls->count == 0)
		return;
	sheets = make_sheets(walls);
	page_heading(report->out, "Laying sheets");
	print_lines(report, 0, 0, "Sizes of blocks are as laid: long, along the wall; deep, front "
		"to back; high. Side 1 starts at the bed's topmost, then leftmost corner and "
		"goes right; the sides follow each other with the bed on the right hand. Distances "
		"run along the wall's outer face from the side's first corner. A run that starts "
		"at 0 on an outer corner goes through it; one that starts a block's depth further "
		"on butts against the run that does.%s All odd courses are alike and so are all "
		"even ones; course 1 lies on the base. Lengths of pieces are places, joint "
		"included. A cut piece at an outer corner shows its block's own end.%s",
		begins_before_a_corner(walls) ?
		" A minus: it begins that far before an inner corner." : "", sheets.has_images ?
		" A bed that is an image of another is laid by that one's sheet, turned or seen "
		"in a looking-glass as it says." : "");
	for (int i = 0; i < sheets.groups.count && !stop_asked(); i++)
		if (walls->list[sheets.groups.list[i].members[0]].turn == TURN_NONE)
			print_sheet(report, &sheets, i);
	groups_fini(&sheets.groups);
	free(sheets.images);
}
