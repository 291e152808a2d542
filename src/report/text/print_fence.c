#include "report/text/print.h"
#include "report/words/words.h"
#include "base/show.h"

static void print_care(const struct report *report)
{
	page_paragraph(report->out, 0, 2, "Have services marked before a hole is dug; near marks dig by "
		"hand, without an auger. An auger takes two people: mind feet and hearing. Cover open "
		"holes. Wet concrete burns skin and eyes: gloves, goggles, rinse at once. Treated "
		"timber: mask when sawing, never burnt.");
	page_paragraph(report->out, 0, 2, "Height, gates near water and where children play are "
		"matters of local code: ask before building.");
	page_note(report->out, "Lengths are from middle to middle of posts. Right and down: the middle "
		"of a post, from the plan's top left corner.");
}

static const char *way(struct spot from, struct spot to)
{
	if (from.y == to.y)
		return from.x < to.x ? "right" : "left";
	return from.y < to.y ? "down" : "up";
}

/* "3 right", and where its first post stands. */
static void line_cells(struct table *table, const struct report *report, int number, struct spot from,
	struct spot to)
{
	text_print(table_cell(table), "%d %s", number, way(from, to));
	show_length(table_cell(table), from.x, report->units);
	show_length(table_cell(table), from.y, report->units);
}

static nm sawn(const struct fencing *fencing, nm place)
{
	return place > fencing->fit ? place - fencing->fit : 0;
}

/* "2 whole, then sawn to 44 3/8 in". */
static void panels_cell(struct text *cell, const struct report *report,
	const struct fencing *fencing, const struct fence_leg *leg)
{
	nm post = block_length(&fencing->fence->block, FENCE_POST);

	if (leg->whole > 0)
		word_count(cell, leg->whole, "whole", "whole");
	if (leg->cut_count > 0)
		text_add(cell, leg->whole > 0 ? ", then sawn to " : "sawn to ");
	for (int i = 0; i < leg->cut_count; i++) {
		text_add(cell, i > 0 ? " and " : "");
		word_inches(cell, report, sawn(fencing, leg->cut[i] - post));
	}
	if (leg->whole + leg->cut_count == 0)
		text_add(cell, "no room for any");
}

static void print_legs(const struct report *report, const struct fencing *fencing)
{
	static const struct table_column columns[] = {
		{ "Leg", COLUMN_LEFT }, { "Right", COLUMN_RIGHT }, { "Down", COLUMN_RIGHT },
		{ "Length", COLUMN_RIGHT }, { "Panels in order", COLUMN_WRAPS },
	};
	struct table table = table_start(columns, 5, 2);

	for (int i = 0; i < fencing->leg_count; i++) {
		const struct fence_leg *leg = &fencing->legs[i];

		line_cells(&table, report, i + 1, leg->from, leg->to);
		show_length(table_cell(&table), leg->length, report->units);
		panels_cell(table_cell(&table), report, fencing, leg);
	}
	table_print(&table, report->out);
}

static void print_gates(const struct report *report, const struct fencing *fencing)
{
	static const struct table_column columns[] = {
		{ "Gate", COLUMN_LEFT }, { "Right", COLUMN_RIGHT }, { "Down", COLUMN_RIGHT },
		{ "Length", COLUMN_RIGHT }, { "Clear", COLUMN_RIGHT }, { "Leaves", COLUMN_WRAPS },
	};
	struct table table = table_start(columns, 6, 2);

	for (int i = 0; i < fencing->gate_count; i++) {
		const struct fence_gate *gate = &fencing->gates[i];
		struct text *cell;

		line_cells(&table, report, i + 1, gate->from, gate->to);
		show_length(table_cell(&table), gate->length, report->units);
		show_inches(table_cell(&table), gate->clear > 0 ? gate->clear : 0, report->units);
		cell = table_cell(&table);
		if (gate->leaves == 0) {
			text_add(cell, "no room for any");
			continue;
		}
		text_print(cell, "%d%cof%c", gate->leaves, PAGE_TIE, PAGE_TIE);
		word_inches(cell, report, gate->leaf);
	}
	if (fencing->gate_count > 0)
		text_add(report->out, "\n");
	table_print(&table, report->out);
}

/* ---- Panels ------------------------------------------------------------------------------------ */

/* "2 of 44 3/8 in + 1 of 3 in". */
static void pieces_cell(struct text *cell, const struct report *report,
	const struct fencing *fencing, const struct cut *cut)
{
	int alike;

	for (int i = 0; i < cut->piece_count; i += alike) {
		for (alike = 1; i + alike < cut->piece_count &&
			cut->pieces[i + alike] == cut->pieces[i];)
			alike++;
		text_print(cell, "%s%d%cof%c", i ? " + " : "", alike, PAGE_TIE, PAGE_TIE);
		word_inches(cell, report, sawn(fencing, cut->pieces[i]));
	}
}

static void print_cuts(const struct report *report, const struct fencing *fencing)
{
	static const struct table_column columns[] = {
		{ "Panels", COLUMN_RIGHT }, { "Saw each into", COLUMN_WRAPS },
	};
	struct table table = table_start(columns, 2, 2);

	for (int i = 0; i < fencing->cut_count; i++) {
		show_count(table_cell(&table), fencing->cuts[i].blocks);
		pieces_cell(table_cell(&table), report, fencing, &fencing->cuts[i]);
	}
	table_print(&table, report->out);
}

static void word_offcuts(struct text *line, const struct report *report,
	const struct fencing *fencing)
{
	bool is_first = true;

	for (int i = 0; i < fencing->leaves_count; i++) {
		if (fencing->leaves[i].from_offcuts == 0)
			continue;
		text_add(line, is_first ? " Offcuts give " : " and ");
		word_count(line, fencing->leaves[i].from_offcuts, "leaf of ", "leaves of ");
		word_inches(line, report, fencing->leaves[i].width);
		is_first = false;
	}
	text_add(line, is_first ? "" : ", to be braced.");
}

static void print_panels(const struct report *report, const struct fencing *fencing)
{
	struct text line = TEXT_EMPTY;

	text_add(&line, "Panels ");
	word_inches(&line, report, fencing->panel);
	text_add(&line, " wide between posts: ");
	word_count(&line, fencing->panels_whole, "whole", "whole");
	if (fencing->panel_pieces > 0) {
		text_add(&line, " and ");
		word_count(&line, fencing->panel_pieces, "narrower,", "narrower,");
		text_add(&line, " for which ");
		word_count(&line, fencing->panels_cut, "is cut up", "are cut up");
	}
	text_add(&line, "; bought ");
	show_count(&line, fencing->panels_whole + fencing->panels_cut);
	text_add(&line, ".");
	word_offcuts(&line, report, fencing);
	if (fencing->cut_count > 0) {
		text_add(&line, " Each piece is sawn ");
		word_inches(&line, report, fencing->fit);
		text_add(&line, " shorter than its place; a saw cut takes ");
		word_inches(&line, report, fencing->kerf);
		text_add(&line, ".");
	}
	text_add(report->out, "\n");
	page_paragraph(report->out, 2, 2, line.bytes);
	text_fini(&line);
	print_cuts(report, fencing);
}

/* ---- Posts ------------------------------------------------------------------------------------- */

static void word_kinds(struct text *line, const struct fencing *fencing)
{
	static const char *const words[] = {
		[POST_END] = "at ends", [POST_CORNER] = "at corners", [POST_TEE] = "at tees",
		[POST_GATE] = "at gates", [POST_LINE] = "in line",
	};
	const char *lead = ": ";

	for (int kind = 0; kind < POST_KINDS; kind++) {
		if (fencing->of_kind[kind] == 0)
			continue;
		text_add(line, lead);
		word_count(line, fencing->of_kind[kind], words[kind], words[kind]);
		lead = ", ";
	}
	text_add(line, ".");
}

static void print_post(const struct report *report, const struct fencing *fencing)
{
	const struct block *fence = &fencing->fence->block;
	struct text line = TEXT_EMPTY;

	word_count(&line, fencing->post_count, "post", "posts");
	text_add(&line, " ");
	word_inches(&line, report, block_length(fence, FENCE_POST));
	text_add(&line, " square");
	word_kinds(&line, fencing);
	text_add(&line, " Each is ");
	word_length(&line, report, fencing->post_length);
	text_add(&line, " long: ");
	word_inches(&line, report, block_length(fence, FENCE_HEIGHT));
	text_add(&line, " high, ");
	word_inches(&line, report, block_length(fence, FENCE_GAP));
	text_add(&line, " of gap, ");
	word_inches(&line, report, fencing->hole.in_ground);
	text_add(&line, " in the ground; bought ");
	word_length(&line, report, fencing->post_stock);
	text_add(&line, " long.");
	text_add(report->out, "\n");
	page_paragraph(report->out, 2, 2, line.bytes);
	text_fini(&line);
}

static void word_bags(struct text *line, double bags)
{
	text_add(line, " (");
	show_decimal(line, bags, 2);
	text_add(line, "\tbags), ");
}

static void word_filling(struct text *line, const struct report *report, const struct post_hole *hole,
	int holes)
{
	word_volume(line, report, holes * hole->gravel);
	text_add(line, " of gravel, ");
	word_volume(line, report, holes * hole->concrete);
	text_add(line, " of concrete");
	word_bags(line, holes * hole->bags);
	word_volume(line, report, holes * hole->spoil);
	text_add(line, " dug out.");
}

static void print_hole(const struct report *report, const struct fencing *fencing)
{
	const struct post_hole *hole = &fencing->hole;
	struct text line = TEXT_EMPTY;

	text_add(&line, "Holes ");
	word_inches(&line, report, hole->across);
	text_add(&line, " across and ");
	word_inches(&line, report, hole->depth);
	text_add(&line, " deep, ");
	word_inches(&line, report, hole->depth - hole->in_ground);
	text_add(&line, " of it gravel. Each: ");
	word_filling(&line, report, hole, 1);
	text_add(&line, " In all: ");
	word_filling(&line, report, hole, fencing->post_count);
	page_paragraph(report->out, 2, 2, line.bytes);
	text_fini(&line);
}

static void print_posts(const struct report *report, const struct fencing *fencing)
{
	static const struct table_column columns[] = {
		{ "Post", COLUMN_LEFT }, { "Right", COLUMN_RIGHT }, { "Down", COLUMN_RIGHT },
	};
	struct table table = table_start(columns, 3, 2);

	print_post(report, fencing);
	print_hole(report, fencing);
	for (int i = 0; i < fencing->post_count; i++) {
		const struct fence_post *post = &fencing->posts[i];

		text_print(table_cell(&table), "%d %s", i + 1, post_kind_word(post->kind));
		show_length(table_cell(&table), post->at.x, report->units);
		show_length(table_cell(&table), post->at.y, report->units);
	}
	table_print(&table, report->out);
}

/* ---- The whole --------------------------------------------------------------------------------- */

static void print_fixings(const struct report *report, const struct fencing *fencing)
{
	struct text line = TEXT_EMPTY;

	text_add(&line, "Fixings: ");
	word_count(&line, fencing->brackets, "bracket", "brackets");
	if (fencing->hinges > 0) {
		text_add(&line, ", ");
		word_count(&line, fencing->hinges, "hinge", "hinges");
		text_add(&line, ", ");
		word_count(&line, fencing->latches, "latch", "latches");
	}
	if (fencing->bolts > 0) {
		text_add(&line, ", ");
		word_count(&line, fencing->bolts, "drop bolt", "drop bolts");
	}
	text_add(&line, ".");
	text_add(report->out, "\n");
	page_paragraph(report->out, 2, 2, line.bytes);
	text_fini(&line);
}

static void print_one(const struct report *report, const struct fencing *fencing)
{
	struct text title = TEXT_EMPTY;

	text_print(&title, "%s: ", fencing->fence->name);
	word_length(&title, report, fencing->length);
	text_add(&title, " of fence, ");
	word_length(&title, report, block_length(&fencing->fence->block, FENCE_HEIGHT));
	text_add(&title, " high");
	text_add(report->out, "\n");
	page_paragraph(report->out, 0, 2, title.bytes);
	text_fini(&title);
	print_legs(report, fencing);
	print_gates(report, fencing);
	print_panels(report, fencing);
	print_posts(report, fencing);
	print_fixings(report, fencing);
}

void print_fence(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;

	if (takeoff->fencing_count == 0)
		return;
	page_heading(report->out, "Fence");
	print_care(report);
	for (int i = 0; i < takeoff->fencing_count; i++)
		print_one(report, &takeoff->fencings[i]);
	page_note(report->out, "Whole sections come first; a rest under a foot is shared by the last "
		"two panels. Two brackets to a rail of a panel, two hinges to a leaf, a latch to a gate "
		"and a drop bolt where it has two leaves. All this: common practice, no published "
		"source.");
}
