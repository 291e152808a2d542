#include "plot/edit/strip.h"
#include "editor/acts/act_groups.h"
#include "editor/acts/shared.h"
#include "editor/cards/cells.h"
#include "editor/cards/card_ask.h"

enum { WAYS_MOST = 4 };

/* What can be put in or taken out at the cursor. */
struct ways {
	struct strip strips[WAYS_MOST];
	const char *words[WAYS_MOST];
	int count, first; /* first: offered first */
};

/* How many cells of the letter under the cursor lie in a line through it, and whether they reach
 * over an axis: from the cursor's cell to its image. */
static int line_of(const struct editor *editor, bool is_level, int axis, bool *is_over)
{
	const struct ground *ground = &editor->plot->ground;
	struct place at = editor->cursor;
	char letter = ground_cell(ground, at.x, at.y);
	int *along = is_level ? &at.y : &at.x, from, here = *along;

	while (ground_holds(ground, at.x, at.y) && ground_cell(ground, at.x, at.y) == letter)
		--*along;
	from = ++*along;
	while (ground_holds(ground, at.x, at.y) && ground_cell(ground, at.x, at.y) == letter)
		++*along;
	*is_over = axis - 1 - here >= from && axis - 1 - here < *along;
	return *along - from;
}

static void way_add(struct ways *ways, struct strip strip, const char *words)
{
	ways->strips[ways->count] = strip;
	ways->words[ways->count++] = words;
}

/* The strip at the cursor and, with the mirror, the one on the axis. */
static void ways_add(struct ways *ways, const struct editor *editor, struct strip strip,
	bool is_over)
{
	struct mirror mirror = mirror_of(editor->plot);
	bool has_axis = mirror_has_axis(&mirror, strip.is_level);
	int axis = mirror_axis(&mirror, strip.is_level);

	strip.cell = strip.is_level ? editor->cursor.y : editor->cursor.x;
	if (!has_axis || 2 * strip.cell + 1 != axis)
		way_add(ways, strip, strip.is_level ?
			has_axis ? "Rows here, and their image" : "Rows here" :
			has_axis ? "Columns here, and their image" : "Columns here");
	if (!has_axis)
		return;
	strip.is_on_axis = true;
	if (is_over)
		ways->first = ways->count;
	way_add(ways, strip, strip.is_level ? "Rows on the axis" : "Columns on the axis");
}

/* The first one is across what lies under the cursor: it gets wider. */
static struct ways ways_at(const struct editor *editor, bool is_out)
{
	struct mirror mirror = mirror_of(editor->plot);
	struct ways ways = { .count = 0 };
	bool is_over[2];
	int width = line_of(editor, false, mirror.across, &is_over[0]);
	int depth = line_of(editor, true, mirror.down, &is_over[1]);

	for (int i = 0; i < 2; i++) {
		bool is_level = (depth < width) != (i == 1);
		int first = ways.first;

		ways_add(&ways, editor, (struct strip){ .is_level = is_level, .is_out = is_out },
			is_over[is_level]);
		if (i == 1)
			ways.first = first;
	}
	return ways;
}

struct stripping {
	struct editor *editor;
	struct strip strip;
	bool is_rounded;
};

/* Why so many cannot be put in or taken out; false, fault filled. */
static bool check_fits(const struct stripping *stripping, struct fault *fault)
{
	const struct strip *strip = &stripping->strip;
	const struct plot *plot = stripping->editor->plot;

	switch (strip_check(plot, strip)) {
	case STRIP_TOO_LARGE:
		return fault_set(fault, 0, "The plan would have %d %s; it has at most %d.",
			strip_side(plot, strip), strip->is_level ? "rows" : "columns", SIDE_MOST);
	case STRIP_TOO_FEW:
		return fault_set(fault, 0, "There are not %d %s to be taken out here.",
			strip->count, strip->is_level ? "rows" : "columns");
	case STRIP_UNEVEN:
		return fault_set(fault, 0,
			"Half-turn, its axis between cells: an even number of cells, such as 2 "
			"cells, keeps both sides alike.");
	case STRIP_FITS:
		break;
	}
	return true;
}

static const struct cells strip_cells = { .least = 1, .most = SIDE_MOST };

static bool count_read(const struct card *card, struct stripping *stripping, struct fault *fault)
{
	struct cells cells = strip_cells;

	if (!cells_read(card, 0, plot_cell(stripping->editor->plot), &cells, fault))
		return false;
	stripping->strip.count = cells.count;
	stripping->is_rounded = cells.is_rounded;
	return check_fits(stripping, fault);
}

static bool count_check(const struct card *card, int field, const struct value *value,
	struct fault *fault)
{
	struct stripping stripping = *(const struct stripping *)card->owner;
	struct cells cells = strip_cells;

	if (!cells_check(card, field, value, plot_cell(stripping.editor->plot), &cells, fault))
		return false;
	stripping.strip.count = cells.count;
	return check_fits(&stripping, fault);
}

static bool count_accept(struct card *card, struct fault *fault)
{
	return count_read(card, card->owner, fault);
}

static bool count_ask(struct stripping *stripping)
{
	struct editor *editor = stripping->editor;
	const struct strip *strip = &stripping->strip;
	struct report report = editor_report(editor, &editor->words);
	const struct field_spec field = { .label = strip->is_level ? "Depth" : "Width",
		.rule = &cells_rule, .required = true, .is_cells = true, .span = SPAN_PLAN,
		.meaning = strip->is_out ? "How much is taken out, from the cursor on." :
			"How much is put in, beginning at the cursor.",
		.typed = exact_length(&report, plot_cell(editor->plot)) };

	return card_ask(editor, &(struct card_spec){
		.title = arena_print(&editor->words, "%s %s", strip->is_out ? "Take out" :
			"Put in", strip->is_level ? "rows" : "columns"),
		.done = strip->is_out ? "take them out" : "put them in", .fields = &field,
		.count = 1, .accept = count_accept, .check = count_check, .owner = stripping });
}

static int64_t gates_of(const struct plot *plot)
{
	int64_t gates = 0;

	for (size_t i = 0; i < plot->details.fence_count; i++)
		gates += (int64_t)plot->details.fences[i].gates.count;
	return gates;
}

static void strip_put(const struct stripping *stripping)
{
	struct editor *editor = stripping->editor;
	const struct strip *strip = &stripping->strip;
	struct report report = editor_report(editor, &editor->words);
	bool had_axis = block_value(&editor->plot->details.head, HEAD_AXIS)->set;
	int64_t gates = gates_of(editor->plot);

	editor->cursor = strip_cell(editor->plot, strip, editor->cursor);
	strip_do(editor_edit(editor), strip);
	editor->is_pegged = editor->is_trailing = editor->said_outside = false;
	editor_drop_mark(editor);
	editor_stroke(editor);
	gates -= gates_of(editor->plot);
	act_say_size(editor, had_axis);
	if (stripping->is_rounded)
		text_add_sentence(&editor->message, "Rounded to whole cells: %d.", strip->count);
	if (gates)
		text_add_sentence(&editor->message, "%s %s no room any more and went.",
			plain_count(&report, gates), gates == 1 ? "gate had" : "gates had");
}

static void act_strip(struct editor *editor, int is_out)
{
	struct ways ways = ways_at(editor, is_out);
	const struct question question = { .answers = ways.words, .count = ways.count,
		.first = ways.first, .text = is_out ?
		"Take out a strip of whole cells, from edge to edge, beginning here:" :
		"Put in a strip of whole cells, from edge to edge; what stands here gets wider:" };
	struct stripping stripping = { .editor = editor };
	int answer = editor->asker->choose(editor->asker, &question);

	if (answer == ANSWER_NONE)
		return;
	stripping.strip = ways.strips[answer];
	if (count_ask(&stripping))
		strip_put(&stripping);
}

static const struct act acts[] = {
	{ .id = ACT_STRIP_PUT, .key_name = "!", .name = "Put in a strip",
		.wish = "widen a path: put in a strip",
		.words = "wider broaden strip insert row column", .writes = true,
		.run_with = act_strip, .with = false },
	{ .id = ACT_STRIP_TAKE, .key_name = "!", .name = "Take out a strip",
		.wish = "narrow a path: take out a strip",
		.words = "narrower strip delete row column", .writes = true,
		.run_with = act_strip, .with = true },
};
const struct act_group acts_of_strips = ACT_GROUP("Plot", acts);
