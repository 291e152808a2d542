#include "report/compare/differences.h"
#include "base/groups.h"
#include "base/hash.h"
#include "base/stop.h"
#include "report/compare/plan_words.h"
#include "report/words/words.h"

#include <ctype.h>
#include <stdlib.h>

/* Where one is: at rows of a part or, one by one, of rows within them. */
struct walk {
	struct comparison *comparison;
	struct differing *to;
	const char *part;
	const struct walk *outer; /* NULL: these are the part's own rows */
	const struct leaf *leaf;  /* of the outer row: these */
	const struct figure_table *table;
	const void *rows[VERSIONS];
};

/* ---- Titles ---------------------------------------------------------------------------------- */

static bool has_flag(const struct leaves *leaves, int flag)
{
	for (int i = 0; i < leaves->count; i++)
		if (leaves->list[i].figure.flags & flag)
			return true;
	return false;
}

static const char *title_part(const struct report *report, const struct leaf *leaf,
	const void *row)
{
	const struct figure *figure = &leaf->figure;

	if (figure->kind == FIGURE_REGION)
		return region_title(report, (int)figure_whole(figure, row));
	if (figure->kind == FIGURE_TEXT && !figure_text(figure, row))
		return "";
	return figure->kind == FIGURE_LETTER ?
		plain_letter(report, *(const char *)figure_field(figure, row)) :
		leaf_value_words(report, leaf, row);
}

/* What the heading on the panel has, else the keys. */
static const char *row_title(struct comparison *comparison, const struct figure_table *table,
	int version, const void *row)
{
	const struct report *report = &comparison->versions[version];
	const struct leaves *leaves = leaves_of(comparison, table);
	int flag = has_flag(leaves, PANEL_TITLE) ? PANEL_TITLE : ROW_KEY;
	bool is_spot = false; /* the part before: what has two goes from one to the other */
	const char *title = "";

	for (int i = 0; i < leaves->count; i++) {
		const struct leaf *leaf = &leaves->list[i];
		bool is_end = is_spot && leaf->figure.kind == FIGURE_SPOT;
		const char *words;

		if (!(leaf->figure.flags & flag))
			continue;
		words = title_part(report, leaf, row);
		title = say(report, "%s%s%s", title, is_end ? " to " :
			*title && *words ? ", " : "", words);
		is_spot = leaf->figure.kind == FIGURE_SPOT;
	}
	return title;
}

/* Of a part that has but one row: nothing. */
static const char *walk_title(const struct walk *walk)
{
	const struct report *report = &walk->comparison->versions[NEW];
	int version = walk->rows[NEW] ? NEW : OLD;
	const char *title = has_flag(leaves_of(walk->comparison, walk->table), ROW_KEY) ?
		row_title(walk->comparison, walk->table, version, walk->rows[version]) : "";
	const char *outer;

	if (!walk->outer)
		return title;
	outer = walk_title(walk->outer);
	return say(report, "%s%s%s%s%s", outer, *outer ? ", " : "", walk->leaf->label,
		*title ? " " : "", title);
}

static const char *walk_path(const struct walk *walk)
{
	return !walk->outer ? "" : say(&walk->comparison->versions[NEW], "%s%s.",
		walk_path(walk->outer), walk->leaf->key);
}

static int walk_region(const struct walk *walk)
{
	const struct leaves *leaves = leaves_of(walk->comparison, walk->table);

	for (int i = 0; i < leaves->count && walk->rows[NEW]; i++)
		if (leaves->list[i].figure.kind == FIGURE_REGION)
			return (int)figure_whole(&leaves->list[i].figure, walk->rows[NEW]);
	return walk->outer ? walk_region(walk->outer) : NO_REGION;
}

/* ---- One row --------------------------------------------------------------------------------- */

static bool goes_on(const struct walk *walk)
{
	return !walk->to->is_done && !stop_asked();
}

static void tell(const struct walk *walk, const struct leaf *leaf)
{
	if (walk->to->is_done)
		return;
	walk->to->found(walk->to, &(struct difference){ walk->part, walk_title(walk),
		walk_path(walk), leaf, { walk->rows[OLD], walk->rows[NEW] }, walk_region(walk) });
	arena_clear(walk->comparison->versions[NEW].words);
}

/* A row that one version alone has: its figures, else that it is there. */
static void tell_alone(const struct walk *walk, const struct leaves *leaves, const void *row)
{
	bool is_told = false;

	for (int i = 0; i < leaves->count; i++) {
		const struct leaf *leaf = &leaves->list[i];

		if (!leaf_is_number(leaf) || (leaf->figure.flags & ROW_KEY) ||
			figure_is_none(&leaf->figure, row))
			continue;
		tell(walk, leaf);
		is_told = true;
	}
	if (!is_told)
		tell(walk, NULL);
}

static void walk_rows(struct walk *walk, const struct rows versions[static VERSIONS]);

static void walk_within(const struct walk *walk, const struct leaf *leaf)
{
	struct walk inner = { walk->comparison, walk->to, walk->part, .outer = walk, .leaf = leaf };
	struct rows within[VERSIONS];

	for (int i = 0; i < VERSIONS; i++) {
		within[i].table = leaf->figure.table;
		within[i].rows = figure_rows(&leaf->figure, walk->rows[i], &within[i].count);
	}
	walk_rows(&inner, within);
}

static void tell_both(const struct walk *walk, const struct leaves *leaves)
{
	const struct versioned old = { OLD, walk->rows[OLD] }, new = { NEW, walk->rows[NEW] };
	bool is_laid_otherwise = false;

	for (int i = 0; i < leaves->count; i++) {
		const struct leaf *leaf = &leaves->list[i];
		bool is_layout = leaf->figure.kind == FIGURE_OBJECT;

		if ((leaf->figure.flags & ROW_KEY) || (is_layout && is_laid_otherwise))
			continue;
		if (leaf_is_rows(leaf)) {
			walk_within(walk, leaf);
		} else if (!leaf_is_alike(walk->comparison, leaf, &old, &new)) {
			is_laid_otherwise = is_laid_otherwise || is_layout;
			tell(walk, leaf);
		}
	}
}

/* old or new may be NULL. */
static void walk_row(struct walk *walk, const void *old, const void *new)
{
	const struct leaves *leaves = leaves_of(walk->comparison, walk->table);

	walk->rows[OLD] = old;
	walk->rows[NEW] = new;
	if (old && new)
		tell_both(walk, leaves);
	else
		tell_alone(walk, leaves, new ? new : old);
}

/* ---- Rows that go together ------------------------------------------------------------------- */

struct matching {
	const struct comparison *comparison;
	const struct leaves *leaves;
};

static bool have_one_key(const void *a, const void *b, const void *context)
{
	const struct matching *matching = context;

	for (int i = 0; i < matching->leaves->count; i++) {
		const struct leaf *leaf = &matching->leaves->list[i];

		if ((leaf->figure.flags & ROW_KEY) &&
			!leaf_is_alike(matching->comparison, leaf, a, b))
			return false;
	}
	return true;
}

static uint64_t hash_key(const void *item, const void *context)
{
	const struct matching *matching = context;
	uint64_t hash = HASH_EMPTY;

	for (int i = 0; i < matching->leaves->count; i++) {
		const struct leaf *leaf = &matching->leaves->list[i];

		if (leaf->figure.flags & ROW_KEY)
			hash = leaf_hash(matching->comparison, leaf, item, hash);
	}
	return hash;
}

/* Adds the rows that are shown; returns how many. */
static int list_rows(struct versioned *list, int version, const struct rows *rows)
{
	const char *row = rows->rows;
	int count = 0;

	for (int i = 0; i < rows->count && !stop_asked(); i++, row += rows->table->row_size)
		if (!row_is_left_out(rows->table, row))
			list[count++] = (struct versioned){ version, row };
	return count;
}

static void walk_rows(struct walk *walk, const struct rows versions[static VERSIONS])
{
	const struct matching matching = { walk->comparison,
		leaves_of(walk->comparison, versions[NEW].table) };
	struct versioned *list = memory_new((size_t)(versions[OLD].count + versions[NEW].count),
		sizeof *list);
	int old_count = list_rows(list, OLD, &versions[OLD]);
	int count = old_count + list_rows(list + old_count, NEW, &versions[NEW]);
	struct groups groups = groups_make(list, count, sizeof *list,
		&(struct alike){ have_one_key, hash_key, &matching });
	int *partners = groups_partners(&groups, old_count);

	walk->table = versions[NEW].table;
	for (int i = old_count; i < groups.item_count && goes_on(walk); i++)
		walk_row(walk, partners[i] == NO_PARTNER ? NULL : list[partners[i]].row,
			list[i].row);
	for (int i = 0; i < old_count && i < groups.item_count && goes_on(walk); i++)
		if (partners[i] == NO_PARTNER)
			walk_row(walk, list[i].row, NULL);
	free(partners);
	groups_fini(&groups);
	free(list);
}

void differences_of_rows(struct comparison *comparison, struct differing *to, const char *part,
	const struct rows versions[static VERSIONS])
{
	walk_rows(&(struct walk){ comparison, to, part, .outer = NULL }, versions);
}

void differences_of(struct comparison *comparison, struct differing *to, const struct shown *shown)
{
	struct rows versions[VERSIONS];

	for (int i = 0; i < VERSIONS; i++) {
		const struct report *report = &comparison->versions[i];

		if (!shown->table) {
			versions[i] = hand_rows(comparison->arena, report, shown->key);
			continue;
		}
		versions[i].table = shown->table;
		versions[i].rows = shown_rows(shown, report->takeoff, &versions[i].count);
	}
	if (versions[NEW].table)
		differences_of_rows(comparison, to, shown->key, versions);
}

const char *differences_heading(const struct report *report, const struct shown *shown)
{
	char *heading = arena_print(report->words, "%s", shown->title ? shown->title : shown->key);

	heading[0] = (char)toupper((unsigned char)heading[0]);
	for (char *c = heading; *c; c++)
		if (*c == '_')
			*c = ' ';
	return heading;
}
