#include "report/text/print.h"
#include "report/words/words.h"
#include "base/memory.h"
#include "base/show.h"

/* Over this two people or a trolley lift; common practice, no published source. */
static const double WEIGHT_OF_CARE = 50 * 0.45359237;

/* ---- Which walls are alike ---------------------------------------------------------------------- */

static int compare(int64_t a, int64_t b)
{
	return (a > b) - (a < b);
}

static int compare_sizes(const struct size *a, const struct size *b)
{
	int order = compare(a->along, b->along);

	order = order ? order : compare(a->across, b->across);
	return order ? order : compare(a->up, b->up);
}

static int compare_pieces(const struct wall_run *a, const struct wall_run *b)
{
	int order = compare(a->piece_count, b->piece_count);

	if (a->pieces == b->pieces)
		return order;
	for (int i = 0; order == 0 && i < a->piece_count; i++)
		order = compare(a->pieces[i], b->pieces[i]);
	return order;
}

static int compare_runs(const struct wall_run *a, const struct wall_run *b)
{
	int order = compare(a->loop, b->loop);

	order = order ? order : compare(a->side, b->side);
	order = order ? order : compare(a->from, b->from);
	order = order ? order : compare(a->length, b->length);
	return order ? order : compare_pieces(a, b);
}

static int compare_courses(const struct wall_course *a, const struct wall_course *b)
{
	int order = compare(a->run_count, b->run_count);

	for (int i = 0; order == 0 && i < a->run_count; i++)
		order = compare_runs(&a->runs[i], &b->runs[i]);
	return order;
}

/* Alike: the same blocks, laid piece for piece alike. */
static int compare_walls(const void *a, const void *b, const void *context)
{
	const struct wall *one = a, *other = b;
	int order = compare_sizes(&one->block, &other->block);

	(void)context;
	order = order ? order : compare(one->courses, other->courses);
	order = order ? order : compare(one->has_cap, other->has_cap);
	order = order ? order : compare_sizes(&one->cap_block, &other->cap_block);
	order = order ? order : (one->weight > other->weight) - (one->weight < other->weight);
	order = order ? order : compare_courses(&one->odd, &other->odd);
	order = order ? order : compare_courses(&one->even, &other->even);
	return order ? order : compare_courses(&one->cap, &other->cap);
}

static int region_of(const struct takeoff *takeoff, int wall)
{
	return takeoff->walls[wall].region;
}

/* ---- One sheet ---------------------------------------------------------------------------------- */

/* "5 whole, 10 5/8 in": equal neighbours together. */
static void pieces_cell(struct table *table, const struct report *report, const struct wall_run *run,
	nm block)
{
	struct text *cell = table_cell(table);
	int alike;

	for (int i = 0; i < run->piece_count; i += alike) {
		nm piece = run->pieces[i];

		for (alike = 1; i + alike < run->piece_count && run->pieces[i + alike] == piece;)
			alike++;
		if (i > 0)
			text_add(cell, ", ");
		if (piece == block)
			word_count(cell, alike, "whole", "whole");
		if (piece != block && alike > 1)
			text_print(cell, "%d%cof%c", alike, PAGE_TIE, PAGE_TIE);
		if (piece != block)
			word_inches(cell, report, piece);
	}
}

/* The side's number, direction on the plan and length, where its first run is told. */
static void side_cells(struct table *table, const struct report *report, const struct loop *loop,
	const struct wall_run *run)
{
	const struct corner *from = &loop->corners[run->side];
	const struct corner *to = &loop->corners[(run->side + 1) % loop->count];
	struct text *cell = table_cell(table);

	if (run->loop > 0)
		text_print(cell, "hole %d, ", run->loop);
	text_print(cell, "%d %s", run->side + 1, to->x > from->x ? "right" : to->x < from->x ? "left" :
		to->y > from->y ? "down" : "up");
	show_length(table_cell(table), outline_side(loop, run->side) * report->takeoff->survey.cell,
		report->units);
}

static void run_cells(struct table *table, const struct report *report, const char *course,
	const struct wall_run *run, nm block)
{
	table_words(table, course);
	show_inches(table_cell(table), run->from, report->units);
	pieces_cell(table, report, run, block);
}

static void side_rows(struct table *table, const struct report *report, const struct wall *wall,
	int side)
{
	if (wall->courses > 1) {
		table_words(table, "");
		table_words(table, "");
		run_cells(table, report, "even", &wall->even.runs[side], wall->block.along);
	}
	if (wall->has_cap) {
		table_words(table, "");
		table_words(table, "");
		run_cells(table, report, "cap", &wall->cap.runs[side], wall->cap_block.along);
	}
}

static void print_sides(const struct report *report, const struct wall *wall)
{
	static const struct table_column columns[] = {
		{ "Side", COLUMN_LEFT }, { "Length", COLUMN_RIGHT }, { "Course", COLUMN_LEFT },
		{ "Starts at", COLUMN_RIGHT }, { "Pieces in order", COLUMN_WRAPS },
	};
	struct table table = table_start(columns, 5, 2);
	struct arena arena = ARENA_EMPTY;
	struct outline outline;

	outline_trace(&outline, &arena, report->plot, &report->takeoff->survey, wall->region);
	for (int i = 0; i < wall->odd.run_count; i++) {
		const struct wall_run *run = &wall->odd.runs[i];

		side_cells(&table, report, &outline.loops[run->loop], run);
		run_cells(&table, report, "odd", run, wall->block.along);
		side_rows(&table, report, wall, i);
	}
	arena_clear(&arena);
	table_print(&table, report->out);
}

/* "17 whole and 4 cut". */
static void word_blocks(struct text *text, int64_t whole, int64_t cut)
{
	word_count(text, whole, "whole", "whole");
	if (cut == 0)
		return;
	text_add(text, " and ");
	word_count(text, cut, "cut", "cut");
}

static void word_course(struct text *text, const char *name, const struct wall_course *course)
{
	text_print(text, "%s ", name);
	word_blocks(text, course->whole, course->cut);
}

/* Counts of odd and even courses, in one where they are the same. */
static void word_courses(struct text *text, const struct wall *wall)
{
	if (wall->courses == 1) {
		word_course(text, "The course", &wall->odd);
	} else if (wall->odd.whole == wall->even.whole && wall->odd.cut == wall->even.cut) {
		word_course(text, "Each course", &wall->odd);
	} else {
		word_course(text, "Each odd course", &wall->odd);
		word_course(text, "; each even course", &wall->even);
	}
}

static void print_blocks(const struct report *report, const struct wall *wall)
{
	struct text line = TEXT_EMPTY;

	word_count(&line, wall->courses, "course", "courses");
	text_add(&line, " of block ");
	word_size(&line, report, &wall->block);
	text_add(&line, ", each ");
	show_weight(&line, wall->block_weight, report->units);
	if (wall->has_cap) {
		text_add(&line, "; cap ");
		word_size(&line, report, &wall->cap_block);
	}
	text_add(&line, ".");
	page_paragraph(report->out, 2, 2, line.bytes);
	text_fini(&line);
}

static void print_counts(const struct report *report, const struct wall *wall, bool is_shared)
{
	struct text line = TEXT_EMPTY;

	word_courses(&line, wall);
	if (wall->has_cap)
		word_course(&line, "; the cap", &wall->cap);
	text_add(&line, is_shared ? ". One bed's wall takes " : ". The wall takes ");
	word_blocks(&line, wall->whole_blocks, wall->cut_pieces);
	text_print(&line, "%s: ", wall->has_cap ? ", without the cap" : "");
	show_weight(&line, wall->weight, report->units);
	text_add(&line, ".");
	page_paragraph(report->out, 2, 2, line.bytes);
	text_fini(&line);
}

static void print_sheet(const struct report *report, const struct group *group)
{
	const struct wall *wall = &report->takeoff->walls[group->members[0]];
	struct text title = TEXT_EMPTY;

	word_group(&title, report, group, region_of);
	if (group->count > 1) {
		text_add(&title, ": ");
		word_count(&title, group->count, "bed", "beds");
		text_add(&title, ", alike piece for piece");
	}
	text_add(report->out, "\n");
	page_paragraph(report->out, 0, 2, title.bytes);
	text_fini(&title);
	print_blocks(report, wall);
	print_counts(report, wall, group->count > 1);
	print_sides(report, wall);
}

static void print_heavy(const struct report *report, double heaviest)
{
	struct text line = TEXT_EMPTY;

	text_add(&line, "Lifting: a block here weighs ");
	show_weight(&line, heaviest, report->units);
	text_print(&line, ". Over %s two people lift, or a trolley; mind what the vehicle may carry.",
		report->units == UNITS_IMPERIAL ? "50 lb" : "23 kg");
	page_paragraph(report->out, 0, 2, line.bytes);
	text_fini(&line);
}

static void print_cautions(const struct report *report)
{
	double heaviest = 0, bead = 0;

	for (int i = 0; i < report->takeoff->wall_count; i++) {
		const struct wall *wall = &report->takeoff->walls[i];

		heaviest = wall->block_weight > heaviest ? wall->block_weight : heaviest;
		bead += wall->bead;
	}
	if (heaviest > WEIGHT_OF_CARE)
		print_heavy(report, heaviest);
	if (bead > 0)
		page_paragraph(report->out, 0, 2, "Adhesive: read the cartridge, work in moving air.");
}

void print_walls(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	struct groups groups;

	if (takeoff->wall_count == 0)
		return;
	page_heading(report->out, "Laying sheets");
	page_paragraph(report->out, 0, 0, "Side 1 starts at the bed's topmost, then leftmost corner and "
		"goes right; the sides follow each other with the bed on the right hand. Distances run "
		"along the wall's outer face from the side's first corner. A run that starts at 0 on an "
		"outer corner goes through it; one that starts a block's depth further on butts against "
		"the run that does. A minus: it begins that far before an inner corner. All odd courses "
		"are alike and so are all even ones; course 1 lies on the base. Lengths of pieces are "
		"places, joint included.");
	print_cautions(report);
	groups = groups_make(takeoff->walls, takeoff->wall_count, sizeof *takeoff->walls,
		compare_walls, NULL);
	for (int i = 0; i < groups.count; i++)
		print_sheet(report, &groups.list[i]);
	groups_fini(&groups);
}
