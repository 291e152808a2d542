#include "report/text/print.h"
#include "plot/mirror.h"
#include "takeoff/fence/panels.h"

static void print_measures(const struct report *report)
{
	print_lines(report, 0, 0, "Lengths are from middle to middle of posts. Right and down: "
		"the middle of a post, from the plan's top left corner.");
}

/* ---- Legs and gates -------------------------------------------------------------------------- */

/* "2 whole, then sawn to 44 3/8 in". */
static const char *panels_cell(const struct report *report, const void *row, const void *context)
{
	const struct fence_leg *leg = row;
	const struct fencing *fencing = context;
	struct panel_group groups[PANEL_GROUPS_MOST];
	int count = panels_in_order(leg, fencing->section, groups);
	struct text words = TEXT_EMPTY;
	bool was_sawn = false;

	for (int i = 0; i < count; i++) {
		bool is_sawn = groups[i].place != fencing->section;

		text_add(&words, i == 0 ? "" : is_sawn && was_sawn ? " and " : ", then ");
		text_add(&words, is_sawn && !was_sawn ? "sawn to " : "");
		text_add(&words, is_sawn ? word_inches(report,
			saw_length(report, groups[i].place - fencing->post, fencing->fit)) :
			word_count(report, groups[i].count, "whole", "whole"));
		was_sawn = is_sawn;
	}
	return count == 0 ? "no room for any" : say_text(report, &words);
}

static const char *leaves_cell(const struct report *report, const void *row, const void *context)
{
	const struct fence_gate *gate = row;

	(void)context;
	return gate->leaves == 0 ? "no room for any" : say(report, "%d%cof%c%s", gate->leaves,
		PAGE_TIE, PAGE_TIE, word_inches(report, gate->leaf));
}

static void print_legs_and_gates(const struct report *report, const struct fencing *fencing)
{
	const struct last_column panels = { "Panels in order", panels_cell, fencing };
	const struct last_column leaves = { "Leaves", leaves_cell, NULL };

	print_rows(report, &fence_leg_table, fencing->legs, fencing->leg_count, 2, &panels);
	if (fencing->gate_count > 0)
		print_blank(report);
	print_rows(report, &fence_gate_table, fencing->gates, fencing->gate_count, 2, &leaves);
}

/* ---- Panels ---------------------------------------------------------------------------------- */

static const char *offcuts_words(const struct report *report, const struct fencing *fencing)
{
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < fencing->leaves_count; i++) {
		const struct fence_leaves *leaves = &fencing->leaves[i];

		if (leaves->from_offcuts > 0)
			text_print(&words, "%s%s%s", words.length ? " and " : " Offcuts give ",
				word_count(report, leaves->from_offcuts, "leaf of ", "leaves of "),
				word_inches(report, leaves->width));
	}
	text_add(&words, words.length ? ", to be braced." : "");
	return say_text(report, &words);
}

static void print_panels(const struct report *report, const struct fencing *fencing)
{
	static const char *const headings[] = { "Panels", "Saw each into" };
	const char *narrower = "", *sawn = "";

	if (fencing->panel_pieces > 0)
		narrower = say(report, " and %s for which %s",
			word_count(report, fencing->panel_pieces, "narrower,", "narrower,"),
			word_count(report, fencing->panels_cut, "is cut up", "are cut up"));
	if (fencing->cut_count > 0)
		sawn = say(report, " Each piece is sawn %s shorter than its place; a saw cut takes "
			"%s.",
			word_inches(report, fencing->fit), word_inches(report, fencing->kerf));
	print_blank(report);
	print_lines(report, 2, 2, "Panels %s wide between posts: %s%s; bought %s.%s%s",
		word_inches(report, fencing->panel),
		word_count(report, fencing->panels_whole, "whole", "whole"), narrower,
		plain_count(report, fencing->panels_bought), offcuts_words(report, fencing), sawn);
	print_cut_table(report, headings, fencing->cuts, fencing->cut_count, fencing->fit);
}

/* ---- Posts ----------------------------------------------------------------------------------- */

/* Whether posts of gates are of another size. */
static bool has_gate_posts(const struct fencing *fencing)
{
	return fencing->gate_post != fencing->post && fencing->of_kind[POST_GATE] > 0;
}

static const char *kinds_words(const struct report *report, const struct fencing *fencing)
{
	struct text words = TEXT_EMPTY;

	for (int kind = 0; kind < POST_KINDS; kind++) {
		const char *where = word_label(&post_words[kind]);

		if (fencing->of_kind[kind] > 0)
			text_print(&words, "%s%s", words.length ? ", " : ": ",
				word_count(report, fencing->of_kind[kind], where, where));
	}
	return say_text(report, &words);
}

static const char *filling_words(const struct report *report, const struct post_hole *hole,
	double holes)
{
	return say(report, "%s of gravel, %s of concrete (%s\tbags), %s dug out.",
		word_volume(report, holes * hole->gravel),
		word_volume(report, holes * hole->concrete),
		plain_decimal(report, holes * hole->bags, 2),
		word_volume(report, holes * hole->spoil));
}

/* where: "", or which posts these are the holes of. */
static void print_holes(const struct report *report, const struct post_hole *hole, int64_t count,
	const char *where)
{
	print_lines(report, 2, 2, "Holes%s %s across and %s deep, %s of it gravel. Each: %s In "
		"all: %s", where, word_inches(report, hole->across),
		word_inches(report, hole->depth), word_inches(report, hole->depth -
		hole->in_ground), filling_words(report, hole, 1),
		filling_words(report, hole, (double)count));
}

static void print_posts(const struct report *report, const struct fencing *fencing)
{
	const struct post_hole *hole = &fencing->hole;
	const char *post = word_count(report, fencing->post_count, "post", "posts");
	int64_t at_gates = has_gate_posts(fencing) ? fencing->of_kind[POST_GATE] : 0;
	const char *others = at_gates == 0 ? "" : say(report, ", those at gates %s",
		word_inches(report, fencing->gate_post));

	print_blank(report);
	print_lines(report, 2, 2, "%s %s square%s%s. Each is %s long: %s high, %s of gap, %s in "
		"the ground; bought %s long.", post, word_inches(report, fencing->post), others,
		kinds_words(report, fencing), word_length(report, fencing->post_length),
		word_inches(report, fencing->height),
		word_inches(report, block_length(&fencing->fence->block, FENCE_GAP)),
		word_inches(report, hole->in_ground), word_length(report, fencing->post_stock));
	print_holes(report, hole, fencing->post_count - at_gates, "");
	if (at_gates > 0)
		print_holes(report, &fencing->gate_hole, at_gates, " at gates");
	print_rows(report, &fence_post_table, fencing->posts, fencing->post_count, 2, NULL);
}

/* ---- The whole ------------------------------------------------------------------------------- */

static void print_fixings(const struct report *report, const struct fencing *fencing)
{
	const char *hinges = "", *bolts = "";

	if (fencing->hinges > 0)
		hinges = say(report, ", %s, %s", word_count(report, fencing->hinges, "hinge",
			"hinges"), word_count(report, fencing->latches, "latch", "latches"));
	if (fencing->bolts > 0)
		bolts = say(report, ", %s",
			word_count(report, fencing->bolts, "drop bolt", "drop bolts"));
	print_blank(report);
	print_lines(report, 2, 2, "Fixings, for %s to a panel: %s%s%s.",
		word_count(report, fencing->rails, "rail", "rails"),
		word_count(report, fencing->brackets, "bracket", "brackets"), hinges, bolts);
}

/* How it was worked out; of what these fences have. */
static void print_rules(const struct report *report)
{
	const struct fences *fences = &report->takeoff->fences;
	int64_t uncut = 0, sawn = 0, gates = 0, bolts = 0;

	for (int i = 0; i < fences->count; i++) {
		uncut += fences->list[i].panels_whole;
		sawn += fences->list[i].panel_pieces;
		gates += fences->list[i].gate_count;
		bolts += fences->list[i].bolts;
	}
	print_note(report, "Posts are listed along the fence.%s%s%s%s%s All this: common practice, "
		"no published source.",
		uncut > 0 && sawn > 0 ? " Whole sections come first; where the rest is under half "
		"a section, the last two panels are equal." : "",
		sawn > 0 && mirror_of(report->plot).kind != MIRROR_OFF ?
		" What the plan's mirror turns onto itself is the same from both ends." : "",
		uncut + sawn > 0 ? " Two brackets to a rail of a panel." : "",
		gates > 0 ? " Two hinges to a leaf, a latch to a gate." : "",
		bolts > 0 ? " A drop bolt to a gate of two leaves." : "");
}

void print_fence(const struct report *report)
{
	const struct fences *fences = &report->takeoff->fences;

	if (fences->count == 0)
		return;
	page_heading(report->out, "Fence");
	print_measures(report);
	for (int i = 0; i < fences->count; i++) {
		const struct fencing *fencing = &fences->list[i];

		print_blank(report);
		print_lines(report, 0, 2, "%s: %s of fence, %s high", fencing->name,
			word_length(report, fencing->length), word_length(report, fencing->height));
		print_legs_and_gates(report, fencing);
		print_panels(report, fencing);
		print_posts(report, fencing);
		print_fixings(report, fencing);
	}
	print_rules(report);
}
