#include "report/text/print.h"
#include "base/stop.h"
#include "report/drawing/fence_lines.h"
#include "takeoff/fence/panels.h"
#include "takeoff/fence/stand.h"

static void print_measures(const struct report *report)
{
	print_lines(report, 0, 0, "Numbers of posts are those of the plan (--only front). Measured "
		"from middle to middle of posts. String: from the plan's left edge, of legs to "
		"right or left from its top edge. Common practice, no published source.");
}

/* ---- Setting out ----------------------------------------------------------------------------- */

/* The table of legs and gates as they follow each other, each with the posts on it. */
struct setting_out {
	struct table table; /* first */
	const struct report *report;
	const struct fencing *fencing;
	int fence;     /* which of them all */
	int leg, gate; /* the next ones */
	size_t at;     /* in fencing->along: the next post */
	int met;       /* how many posts have been come to */
};

static bool is_level(enum heading heading)
{
	return heading == HEADING_RIGHT || heading == HEADING_LEFT;
}

/* Where the string runs that a leg or a gate follows. */
static const char *string_words(const struct report *report, enum heading heading, struct spot from)
{
	return word_length(report, is_level(heading) ? from.y : from.x);
}

/* Takes the next post; "3", or "3 corner" where it is come to for the first time. */
static const struct fence_post *add_post(struct setting_out *out, struct text *words, bool *is_new)
{
	int post = out->fencing->along[out->at++];
	const struct fence_post *stands = &out->fencing->posts[post];
	char name[FENCE_NAME_MOST];

	fence_post_name(out->fence, post, name);
	*is_new = post == out->met;
	out->met += *is_new;
	text_add(words, name);
	if (*is_new)
		text_print(words, "%c%s", PAGE_TIE, post_words[stands->kind].key);
	return stands;
}

/* "3:", or where nothing before says where it stands "1 end, 5 1/4 in down:". */
static void add_first_post(struct setting_out *out, struct text *words, enum heading heading)
{
	bool is_new;
	const struct fence_post *post = add_post(out, words, &is_new);

	if (is_new)
		text_print(words, ", %s%c%s", word_length(out->report, is_level(heading) ?
			post->at.x : post->at.y), PAGE_TIE, is_level(heading) ? "across" : "down");
	text_add(words, ": ");
}

/* ", 2 line at 8 ft" */
static void add_next_post(struct setting_out *out, struct text *words, struct spot from)
{
	bool is_new;
	const struct fence_post *post;

	text_add(words, ", ");
	post = add_post(out, words, &is_new);
	text_print(words, "%cat%c%s", PAGE_TIE, PAGE_TIE,
		word_length(out->report, spot_distance(from, post->at)));
}

static const char *panel_words(const struct setting_out *out, nm place)
{
	const struct fencing *fencing = out->fencing;

	return place == fencing->section ? "whole" : say(out->report, "sawn%cto%c%s", PAGE_TIE,
		PAGE_TIE, word_inches(out->report,
		saw_length(out->report, place - fencing->post, fencing->fit)));
}

static void add_panels(struct setting_out *out, struct text *words, const struct fence_leg *leg)
{
	struct panel_group groups[PANEL_GROUPS_MOST];
	int count = panels_in_order(leg, out->fencing->section, groups);
	const char *before = "";

	for (int i = 0; i < count; i++)
		for (int64_t j = 0; j < groups[i].count && !stop_asked(); j++) {
			text_print(words, "%s%s", before, panel_words(out, groups[i].place));
			add_next_post(out, words, leg->from);
			before = ", ";
		}
}

/* "1 end, 5 1/4 in down: whole, 2 line at 8 ft, sawn to 45 7/8 in, 3 corner at 12 ft". */
static const char *leg_words(struct setting_out *out, const struct fence_leg *leg)
{
	struct text words = TEXT_EMPTY;

	if (leg->length == 0)
		return "no room for any";
	add_first_post(out, &words, leg->heading);
	if (leg->whole + leg->cut_count > 0) {
		add_panels(out, &words, leg);
	} else {
		text_add(&words, "no room for a panel");
		add_next_post(out, &words, leg->from);
	}
	return say_text(out->report, &words);
}

/* "4: 44 1/2 in clear, 1 leaf of 43 1/4 in, 5 gate at 4 ft". */
static const char *gate_words(struct setting_out *out, const struct fence_gate *gate)
{
	const struct report *report = out->report;
	struct text words = TEXT_EMPTY;

	if (gate->length == 0)
		return "no room for any";
	add_first_post(out, &words, gate->heading);
	text_print(&words, "%s%cclear, ", word_inches(report, gate->clear), PAGE_TIE);
	if (gate->leaves == 0)
		text_add(&words, "no room for a leaf");
	else
		text_print(&words, "%s%c%s", word_count(report, gate->leaves, "leaf\tof",
			"leaves\tof"), PAGE_TIE, word_inches(report, gate->leaf));
	add_next_post(out, &words, gate->from);
	return say_text(report, &words);
}

static void fill_leg(struct setting_out *out, const char *cells[])
{
	const struct fence_leg *leg = &out->fencing->legs[out->leg++];

	cells[0] = say(out->report, "%d %s", out->leg, heading_words[leg->heading].key);
	cells[1] = string_words(out->report, leg->heading, leg->from);
	cells[2] = leg_words(out, leg);
}

static void fill_gate(struct setting_out *out, const char *cells[])
{
	const struct fence_gate *gate = &out->fencing->gates[out->gate];
	char name[FENCE_NAME_MOST];

	fence_gate_name(out->fence, out->gate++, name);
	cells[0] = say(out->report, "%s %s", name, heading_words[gate->heading].key);
	cells[1] = string_words(out->report, gate->heading, gate->from);
	cells[2] = gate_words(out, gate);
}

static bool next_leg_or_gate(struct table *table, const char *cells[])
{
	struct setting_out *out = (struct setting_out *)table;
	const struct fencing *fencing = out->fencing;

	arena_clear(out->report->words);
	if (out->gate < fencing->gate_count && fencing->gates[out->gate].legs_before == out->leg) {
		fill_gate(out, cells);
	} else if (out->leg < fencing->leg_count) {
		fill_leg(out, cells);
	} else {
		out->leg = out->gate = out->met = 0;
		out->at = 0;
		return false;
	}
	return true;
}

static void print_setting_out(const struct report *report, int fence)
{
	static const struct table_column columns[] = {
		{ "Leg", COLUMN_LEFT }, { "String", COLUMN_RIGHT },
		{ "Posts, how far along, and what is between", COLUMN_WRAPS },
	};
	struct setting_out out = { .table = { columns, 3, 2, next_leg_or_gate, 0 },
		.report = report,
		.fencing = &report->takeoff->fences.list[fence], .fence = fence };

	table_print(&out.table, report->out);
	if (!report->is_whole)
		print_blank(report);
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
	const char *uncut = "", *narrower = "", *sawn = "";

	if (fencing->panels_whole > 0)
		uncut = say(report, "%s%s", word_count(report, fencing->panels_whole, "whole",
			"whole"), fencing->panel_pieces > 0 ? " and " : "");
	if (fencing->panel_pieces > 0)
		narrower = say(report, "%s cut from %s",
			word_count(report, fencing->panel_pieces, "narrower", "narrower"),
			plain_count(report, fencing->panels_cut));
	if (fencing->cut_count > 0)
		sawn = say(report, " Each piece is sawn %s shorter than its place; a saw cut takes "
			"%s: %s.", word_inches(report, fencing->fit),
			word_inches(report, fencing->kerf),
			cuts_words(report, fencing->cuts, fencing->cut_count, fencing->fit));
	print_lines(report, 2, 2, "Panels %s wide between posts: %s%s; bought\t%s.%s%s",
		word_inches(report, fencing->panel), uncut, narrower,
		plain_count(report, fencing->panels_bought), offcuts_words(report, fencing), sawn);
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

/* What a post is longer than it needs to be. */
static const char *over_words(const struct report *report, const struct fencing *fencing)
{
	nm over = fencing->post_stock - fencing->post_length;

	return over == 0 ? "" : say(report, ": sink it %s deeper or saw the top, never the buried "
		"end", word_inches(report, over));
}

/* "Each is 5 ft 2 in long: 36 in high, 2 in of gap, 24 in in the ground; bought 6 ft long". */
static const char *length_words(const struct report *report, const struct fencing *fencing)
{
	return say(report, "Each is %s long: %s high, %s of gap, %s in the ground; bought %s "
		"long%s", word_length(report, fencing->post_length),
		word_inches(report, fencing->height),
		word_inches(report, block_length(&fencing->fence->block, FENCE_GAP)),
		word_inches(report, fencing->hole.in_ground),
		word_length(report, fencing->post_stock), over_words(report, fencing));
}

/* "They are 5 ft 2 in to 6 ft 1 in long, ... bought 4 of 6 ft, 2 of 7 ft: saw tops off ...". */
static const char *lengths_words(const struct report *report, const struct fencing *fencing)
{
	struct text words = TEXT_EMPTY;

	text_print(&words, "They are %s to %s long, as the ground falls, %s of it in the ground; "
		"bought ", word_length(report, fencing->post_shortest),
		word_length(report, fencing->post_length),
		word_inches(report, fencing->hole.in_ground));
	for (int i = 0; i < fencing->stock_count; i++) {
		const struct post_stock *stock = &fencing->stocks[i];

		text_print(&words, "%s%s%cof%c%s%s", i > 0 ? ", " : "",
			plain_count(report, stock->count), PAGE_TIE, PAGE_TIE,
			word_length(report, stock->length), stock->is_of_gates ? " at gates" : "");
	}
	text_add(&words, ": saw tops off level, never the buried end");
	return say_text(report, &words);
}

static void print_posts(const struct report *report, const struct fencing *fencing)
{
	bool is_alike = fencing->post_shortest == fencing->post_length;
	const char *post = word_count(report, fencing->post_count, "post", "posts");
	int64_t at_gates = has_gate_posts(fencing) ? fencing->of_kind[POST_GATE] : 0;
	const char *others = at_gates == 0 ? "" : say(report, ", those at gates %s",
		word_inches(report, fencing->gate_post));

	print_lines(report, 2, 2, "%s %s square%s%s. %s.", post,
		word_inches(report, fencing->post), others, kinds_words(report, fencing),
		is_alike ? length_words(report, fencing) : lengths_words(report, fencing));
	print_holes(report, &fencing->hole, fencing->post_count - at_gates, "");
	if (at_gates > 0)
		print_holes(report, &fencing->gate_hole, at_gates, " at gates");
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
	print_lines(report, 2, 2, "Fixings, for %s to a panel: %s%s%s.",
		word_count(report, fencing->rails, "rail", "rails"),
		word_count(report, fencing->brackets, "bracket", "brackets"), hinges, bolts);
}

void print_fence(const struct report *report)
{
	const struct fences *fences = &report->takeoff->fences;

	if (fences->count == 0)
		return;
	if (!report->is_whole)
		print_measures(report);
	for (int i = 0; i < fences->count; i++) {
		const struct fencing *fencing = &fences->list[i];

		print_blank(report);
		print_lines(report, 0, 2, "%s: %s of fence, %s high", fencing->name,
			word_length(report, fencing->length), word_length(report, fencing->height));
		print_setting_out(report, i);
		print_fence_levels(report, i);
		print_panels(report, fencing);
		print_posts(report, fencing);
		print_fixings(report, fencing);
	}
}
