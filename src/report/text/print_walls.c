#include "report/text/print.h"
#include "base/stop.h"

#include <math.h>

/* ---- One sheet ------------------------------------------------------------------------------- */

/* "5 whole, 10 5/8 in": equal neighbours joined. */
static const char *pieces_words(const struct report *report, const struct wall_run *run, nm block)
{
	struct text words = TEXT_EMPTY;
	int alike;

	for (int i = 0; i < run->piece_count; i += alike) {
		nm piece = run->pieces[i];

		for (alike = 1; i + alike < run->piece_count && run->pieces[i + alike] == piece;)
			alike++;
		text_add(&words, i > 0 ? ", " : "");
		if (piece == block)
			text_add(&words, word_count(report, alike, "whole", "whole"));
		if (piece != block && alike > 1)
			text_print(&words, "%d%cof%c", alike, PAGE_TIE, PAGE_TIE);
		if (piece != block)
			text_add(&words, word_inches(report, piece));
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
	cells[3] = plain_inches(report, run->from);
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

			fill_cells(sides, shown[sides->course].name, run, cells);
			cells[4] = pieces_words(sides->report, run, shown[sides->course].block);
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
	struct sides sides = { .table = { columns, 5, 2, next_run }, .report = report,
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

static void print_sheet(const struct report *report, const struct walls *walls,
	const struct group *group)
{
	const struct wall *wall = &walls->list[group->members[0]];

	print_blank(report);
	print_lines(report, 0, 2, "%s", group_title(report, &wall_table, walls->list, group,
		", alike piece for piece"));
	print_lines(report, 2, 2, "%s of block %s, each %s%s%s.",
		word_count(report, wall->courses, "course", "courses"),
		word_size(report, &wall->block), plain_weight(report, wall->block_weight),
		wall->has_cap ? "; cap " : "",
		wall->has_cap ? word_size(report, &wall->cap_block) : "");
	print_lines(report, 2, 2, "%s%s. %s wall takes %s%s: %s.", courses_words(report, wall),
		wall->has_cap ? course_words(report, "; the cap", &wall->cap) : "",
		group->count > 1 ? "One bed's" : "The",
		blocks_words(report, wall->whole_blocks, wall->cut_pieces),
		wall->has_cap ? ", without the cap" : "", plain_weight(report, wall->weight));
	print_sides(report, wall);
}

static void print_cautions(const struct report *report, const struct walls *walls)
{
	double heaviest = 0, bead = 0;

	for (int i = 0; i < walls->count; i++) {
		heaviest = fmax(heaviest, walls->list[i].block_weight);
		bead += walls->list[i].bead;
	}
	if (heaviest > LIFT_MOST)
		print_lines(report, 0, 2, "Lifting: a block here weighs %s. Over %s two people "
			"lift, or a trolley; mind what the vehicle may carry.",
			plain_weight(report, heaviest),
			report->units == UNITS_IMPERIAL ? "50 lb" : "23 kg");
	if (bead > 0)
		print_lines(report, 0, 2, "Adhesive: read the cartridge, work in moving air.");
}

void print_walls(const struct report *report)
{
	const struct walls *walls = &report->takeoff->walls;
	struct groups groups;

	if (walls->count == 0)
		return;
	page_heading(report->out, "Laying sheets");
	print_lines(report, 0, 0, "Side 1 starts at the bed's topmost, then leftmost corner and "
		"goes right; the sides follow each other with the bed on the right hand. Distances "
		"run along the wall's outer face from the side's first corner. A run that starts "
		"at 0 on an outer corner goes through it; one that starts a block's depth further "
		"on butts against the run that does. A minus: it begins that far before an inner "
		"corner. All odd courses are alike and so are all even ones; course 1 lies on the "
		"base. Lengths of pieces are places, joint included.");
	print_cautions(report, walls);
	groups = rows_groups(&wall_table, walls->list, walls->count);
	for (int i = 0; i < groups.count && !stop_asked(); i++)
		print_sheet(report, walls, &groups.list[i]);
	groups_fini(&groups);
}
