#include "takeoff/ground/edging.h"
#include "base/number.h"
#include "base/stop.h"

#include <limits.h>
#include <stdlib.h>

/* What lies at one side of an edge, as edging sees it. */
enum beside { BESIDE_OTHER, BESIDE_PATH, BESIDE_LEVEL_BED, BESIDE_NO_EDGING, BESIDE_HOLDS };
enum { BESIDES = BESIDE_HOLDS + 1 };

/* Symmetric; between() leaves out a letter's edge with itself. */
static const bool is_edged[BESIDES][BESIDES] = {
	[BESIDE_OTHER] = { [BESIDE_PATH] = true, [BESIDE_LEVEL_BED] = true },
	[BESIDE_PATH] = { [BESIDE_OTHER] = true, [BESIDE_LEVEL_BED] = true },
	[BESIDE_LEVEL_BED] = { [BESIDE_OTHER] = true, [BESIDE_PATH] = true,
		[BESIDE_LEVEL_BED] = true },
};

/* An upright run that may continue in the next row. */
struct upright {
	int x, top;
};

struct edger {
	const struct survey *survey;
	enum beside of[UCHAR_MAX + 1]; /* by letter */
	int64_t held;                  /* held sides of the plan */
	void (*run)(void *context, struct leg run);
	void *context;
	struct upright *now, *next;    /* by x */
	size_t now_count, next_count;
};

static enum beside beside_of(const struct entry *entry)
{
	const struct block *block = &entry->block;

	switch (entry->class) {
	case CLASS_BED:
		return block_number(block, BED_BUILD) == BUILD_RAISED ? BESIDE_HOLDS :
			BESIDE_LEVEL_BED;
	case CLASS_PATH:
		return block_number(block, PATH_EDGING) == CHOICE_YES ? BESIDE_PATH :
			BESIDE_NO_EDGING;
	case CLASS_FIXTURE:
		return BESIDE_HOLDS;
	case CLASS_LAWN:
	case CLASS_OPEN:
	case CLASS_BOUNDARY:
		return BESIDE_OTHER;
	}
	return BESIDE_OTHER;
}

static enum beside beyond(const struct edger *edger, enum plan_side side)
{
	return (edger->held & side) ? BESIDE_HOLDS : BESIDE_OTHER;
}

static enum beside beside(const struct edger *edger, const struct run *run)
{
	return edger->of[(unsigned char)run->letter];
}

static bool between(const struct edger *edger, const struct run *a, const struct run *b)
{
	return a->letter != b->letter && is_edged[beside(edger, a)][beside(edger, b)];
}

/* ---- Level runs ------------------------------------------------------------------------------ */

/* A level run that may continue. */
struct level {
	struct edger *edger;
	int y;
	int left, right; /* none: both the same */
};

static void level_end(struct level *level)
{
	if (level->right > level->left)
		level->edger->run(level->edger->context, (struct leg){ { level->left, level->y },
			{ level->right, level->y } });
	level->left = level->right = 0;
}

static void level_side(struct level *level, int left, int right, bool edged)
{
	if (!edged || left != level->right)
		level_end(level);
	if (!edged)
		return;
	if (level->left == level->right)
		level->left = left;
	level->right = right;
}

/* Along the plan's top or bottom. */
static void level_rim(struct edger *edger, int y, enum plan_side side)
{
	const struct survey *survey = edger->survey;
	struct level level = { edger, side == SIDE_TOP ? 0 : survey->rows, 0, 0 };

	for (size_t i = survey->row_runs[y]; i < survey->row_runs[y + 1]; i++) {
		const struct run *run = &survey->runs[i];

		level_side(&level, run->left, run->right,
			is_edged[beside(edger, run)][beyond(edger, side)]);
	}
	level_end(&level);
}

/* Between row y - 1 and row y. */
static void level_line(struct edger *edger, int y)
{
	const struct survey *survey = edger->survey;
	size_t above = survey->row_runs[y - 1], below = survey->row_runs[y], above_end = below;
	struct level level = { edger, y, 0, 0 };
	int x = 0;

	while (above < above_end) {
		const struct run *a = &survey->runs[above], *b = &survey->runs[below];
		int end = least(a->right, b->right);

		level_side(&level, x, end, between(edger, a, b));
		x = end;
		above += a->right == end;
		below += b->right == end;
	}
	level_end(&level);
}

/* ---- Upright runs ---------------------------------------------------------------------------- */

/* Ends the runs left of x, which do not continue in row y. Returns the first that is left. */
static size_t upright_end(struct edger *edger, size_t first, int x, int y)
{
	for (; first < edger->now_count && edger->now[first].x < x; first++) {
		const struct upright *done = &edger->now[first];

		edger->run(edger->context, (struct leg){ { done->x, done->top }, { done->x, y } });
	}
	return first;
}

/* Edges the side at x of row y. first: of the runs from above that are not yet passed; returns
 * it. */
static size_t upright_side(struct edger *edger, size_t first, int x, int y)
{
	struct upright *side = &edger->next[edger->next_count++];

	first = upright_end(edger, first, x, y);
	*side = (struct upright){ x, y };
	if (first < edger->now_count && edger->now[first].x == x)
		*side = edger->now[first++];
	return first;
}

static void upright_row(struct edger *edger, int y)
{
	const struct survey *survey = edger->survey;
	const struct run *run = &survey->runs[survey->row_runs[y]];
	const struct run *last = &survey->runs[survey->row_runs[y + 1] - 1];
	struct upright *done = edger->now;
	size_t first = 0;

	edger->next_count = 0;
	if (is_edged[beside(edger, run)][beyond(edger, SIDE_LEFT)])
		first = upright_side(edger, first, 0, y);
	for (; run < last; run++)
		if (between(edger, run, run + 1))
			first = upright_side(edger, first, run->right, y);
	if (is_edged[beside(edger, last)][beyond(edger, SIDE_RIGHT)])
		first = upright_side(edger, first, last->right, y);
	upright_end(edger, first, INT_MAX, y);
	edger->now = edger->next;
	edger->now_count = edger->next_count;
	edger->next = done;
}

void edging_walk(const struct basis *basis, void (*run)(void *context, struct leg run),
	void *context)
{
	const struct survey *survey = basis->survey;
	const struct details *details = &basis->plot->details;
	size_t lines = (size_t)survey->columns + 1;
	struct edger edger = { .survey = survey, .held = block_number(basis->allow, ALLOW_HELD),
		.run = run, .context = context,
		.now = memory_new(lines, sizeof *edger.now),
		.next = memory_new(lines, sizeof *edger.next) };

	for (size_t i = 0; i < details->legend_count; i++)
		edger.of[(unsigned char)details->legend[i].letter] =
			beside_of(&details->legend[i]);
	level_rim(&edger, 0, SIDE_TOP);
	level_rim(&edger, survey->rows - 1, SIDE_BOTTOM);
	for (int y = 1; y < survey->rows && !stop_asked(); y++)
		level_line(&edger, y);
	for (int y = 0; y < survey->rows && !stop_asked(); y++)
		upright_row(&edger, y);
	upright_end(&edger, 0, INT_MAX, survey->rows);
	free(edger.now);
	free(edger.next);
}

/* ---- What is bought -------------------------------------------------------------------------- */

int64_t edging_spikes(nm length, nm spacing)
{
	return quotient_up(length, spacing) + 1;
}

/* runs: by length in cells. */
static void count_run(void *runs, struct leg run)
{
	((int64_t *)runs)[leg_length(run)]++;
}

static void add_row(struct edging *edging, struct edging_row *row)
{
	nm rest = row->length % edging->piece;

	row->spikes = edging_spikes(row->length, edging->spacing);
	row->whole = row->length / edging->piece;
	row->rest = rest > edging->fit ? rest : 0;
	edging->length += row->runs * row->length;
	edging->runs += row->runs;
	edging->spikes += row->runs * row->spikes;
	edging->whole += row->runs * row->whole;
}

static void cut_rests(struct edging *edging, struct arena *arena)
{
	const struct saw saw = { .block = edging->piece, .kerf = edging->kerf,
		.fit = edging->fit };
	struct batch *rests = memory_new((size_t)edging->row_count, sizeof *rests);
	size_t count = 0;

	for (int i = 0; i < edging->row_count; i++) {
		const struct edging_row *row = &edging->rows[i];

		if (row->rest > 0)
			rests[count++] = (struct batch){ row->rest, row->runs };
	}
	edging->cuts = packing_cut(arena, &saw, rests, count, &edging->cut_count);
	for (int i = 0; i < edging->cut_count; i++)
		edging->cut_up += edging->cuts[i].blocks;
	edging->bought = edging->whole + edging->cut_up;
	free(rests);
}

void edging_compute(struct edging *out, const struct basis *basis)
{
	const struct survey *survey = basis->survey;
	int longest = most(survey->columns, survey->rows);
	int64_t *runs = memory_new((size_t)longest + 1, sizeof *runs);
	struct edging_row *rows = arena_new(basis->arena, (size_t)longest, sizeof *rows);

	*out = (struct edging){ .piece = block_length(basis->allow, ALLOW_EDGING_PIECE),
		.spacing = block_length(basis->allow, ALLOW_EDGING_SPIKE),
		.kerf = block_length(basis->allow, ALLOW_KERF),
		.fit = block_length(basis->allow, ALLOW_FIT), .rows = rows };
	edging_walk(basis, count_run, runs);
	for (int cells = longest; cells > 0; cells--) {
		if (runs[cells] == 0)
			continue;
		rows[out->row_count] = (struct edging_row){ .length = cells * survey->cell,
			.runs = runs[cells] };
		add_row(out, &rows[out->row_count++]);
	}
	free(runs);
	cut_rests(out, basis->arena);
}

void edging_items(struct item_list *items, const struct edging *edging)
{
	if (edging->runs == 0)
		return;
	item_add(items, &(struct item){ .good = GOOD_EDGING, .section = SECTION_STONE,
		.laid = (double)edging->bought, .order = (double)edging->bought,
		.note = { .kind = NOTE_PIECE, .lengths = { edging->piece } } });
	item_add_bare(items, GOOD_EDGING_SPIKE, SECTION_STONE, (double)edging->spikes);
}

static const struct figure figures[] = {
	{ .label = "Edging", .kind = FIGURE_HEADING },
	{ NULL, NULL, "Length", FIELD(LENGTH, edging, length) },
	{ NULL, NULL, "Straight runs", FIELD(COUNT, edging, runs), .flags = ROW_NEEDED },
	{ NULL, NULL, "Pieces cut up", FIELD(COUNT, edging, cut_up) },
};
const struct figure_table edging_table = FIGURE_TABLE(edging, figures);

static const struct figure row_figures[] = {
	{ NULL, "Runs", NULL, FIELD(COUNT, edging_row, runs) },
	{ "length_m", "Each", NULL, FIELD(LENGTH, edging_row, length), .flags = ROW_KEY },
	{ "runs", NULL, NULL, FIELD(COUNT, edging_row, runs) },
	{ "whole_each", "Whole pieces", NULL, FIELD(COUNT, edging_row, whole),
		.flags = TEXT_DASHED },
	{ "rest_m", "Rest", NULL, FIELD(INCHES, edging_row, rest), .flags = TEXT_DASHED },
	{ "spikes_each", "Spikes each", NULL, FIELD(COUNT, edging_row, spikes) },
};
const struct figure_table edging_row_table = FIGURE_TABLE(edging_row, row_figures);

static const struct figure cut_figures[] = {
	{ "pieces", NULL, NULL, FIELD(COUNT, cut, blocks) },
	{ "lengths_m", NULL, NULL, FIELDS(LENGTHS, cut, pieces, piece_count), .flags = ROW_KEY },
};
const struct figure_table edging_cut_table = FIGURE_TABLE(cut, cut_figures);
