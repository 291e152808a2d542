#include "report/compare/leaf.h"
#include "base/hash.h"
#include "report/words/alike.h"
#include "takeoff/ground/edging.h"

#include <assert.h>
#include <ctype.h>
#include <math.h>
#include <string.h>

/* ---- Those of a table ------------------------------------------------------------------------ */

struct growing {
	struct arena *arena;
	struct leaf *list;
	size_t count, capacity;
};

/* Without the unit at its end. */
static size_t key_length(const char *key)
{
	static const char *const units[] = { "_m", "_m2", "_m3", "_kg" };
	const char *last = strrchr(key, '_');

	for (size_t i = 0; last && i < sizeof units / sizeof *units; i++)
		if (strcmp(last, units[i]) == 0)
			return (size_t)(last - key);
	return strlen(key);
}

/* "Inner area" for inner_area_m2. */
static const char *label_of(struct arena *arena, const char *key)
{
	char *label = arena_print(arena, "%.*s", (int)key_length(key), key);

	for (char *c = label; *c; c++)
		if (*c == '_' || *c == '.')
			*c = ' ';
	label[0] = (char)toupper((unsigned char)label[0]);
	return label;
}

/* "whole_blocks" for Whole blocks. */
static const char *key_of(struct arena *arena, const char *label)
{
	char *key = arena_print(arena, "%s", label);

	for (char *c = key; *c; c++)
		*c = isalnum((unsigned char)*c) ? (char)tolower((unsigned char)*c) : '_';
	return key;
}

static const char *name_of(const struct figure *figure)
{
	return figure->label && *figure->label ? figure->label :
		figure->heading && *figure->heading ? figure->heading : NULL;
}

/* Where a field is declared twice its name for people goes with how it is shown to them. */
static void leaf_add(struct growing *leaves, const struct figure *figure, const char *key)
{
	const char *name = name_of(figure);

	for (size_t i = 0; i < leaves->count; i++) {
		struct leaf *leaf = &leaves->list[i];
		int flags = leaf->figure.flags | figure->flags;

		if (leaf->figure.at != figure->at || leaf->figure.size != figure->size)
			continue;
		if (!leaf->label && name)
			leaf->figure = *figure;
		leaf->label = leaf->label ? leaf->label : name;
		leaf->key = leaf->key ? leaf->key : key;
		leaf->figure.flags = flags;
		return;
	}
	leaves->list = arena_grow(leaves->arena, leaves->list, leaves->count, &leaves->capacity,
		sizeof *leaves->list);
	leaves->list[leaves->count++] = (struct leaf){ *figure, key, name };
}

static bool is_shown(const struct figure *figure)
{
	return figure->key || name_of(figure) || figure->kind == FIGURE_OBJECT ||
		figure->kind == FIGURE_ROWS;
}

/* offset: of the row in the outer one; path: of its keys, with a dot at its end. */
static void table_add(struct growing *leaves, const struct figure_table *table, size_t offset,
	const char *path)
{
	for (int i = 0; i < table->count; i++) {
		struct figure figure = table->figures[i];
		const char *key = !figure.key ? NULL :
			arena_print(leaves->arena, "%s%s", path, figure.key);

		if (!is_shown(&figure) || figure.kind >= FIGURE_ALIKE ||
			figure.kind == FIGURE_ENTRY)
			continue;
		figure.at += offset;
		figure.count_at += offset;
		if (figure.kind == FIGURE_CUTS) {
			figure.kind = FIGURE_ROWS;
			figure.table = &edging_cut_table;
		}
		if (figure.kind == FIGURE_OBJECT && key)
			table_add(leaves, figure.table, figure.at,
				arena_print(leaves->arena, "%s.", key));
		else
			leaf_add(leaves, &figure, key);
	}
}

/* What has no name is how something is laid. */
static void leaf_name(struct growing *leaves, struct leaf *leaf)
{
	if (!leaf->key && !leaf->label)
		leaf->label = "Layout";
	if (!leaf->label)
		leaf->label = label_of(leaves->arena, leaf->key);
	if (!leaf->key)
		leaf->key = key_of(leaves->arena, leaf->label);
}

const struct leaves *leaves_of(struct comparison *comparison, const struct figure_table *table)
{
	struct growing leaves = { .arena = comparison->arena };
	struct leaves *out;

	for (int i = 0; i < comparison->leaves_count; i++)
		if (comparison->leaves[i].table == table)
			return &comparison->leaves[i];
	assert(comparison->leaves_count < TABLES_MOST);
	table_add(&leaves, table, 0, "");
	for (size_t i = 0; i < leaves.count; i++)
		leaf_name(&leaves, &leaves.list[i]);
	out = &comparison->leaves[comparison->leaves_count++];
	*out = (struct leaves){ table, leaves.list, (int)leaves.count };
	return out;
}

/* ---- Alike ----------------------------------------------------------------------------------- */

bool leaf_is_rows(const struct leaf *leaf)
{
	return leaf->figure.kind == FIGURE_ROWS;
}

bool leaf_is_number(const struct leaf *leaf)
{
	switch (leaf->figure.kind) {
	case FIGURE_COUNT:
	case FIGURE_LENGTH:
	case FIGURE_INCHES:
	case FIGURE_AREA:
	case FIGURE_VOLUME:
	case FIGURE_WEIGHT:
	case FIGURE_WATER:
	case FIGURE_FLOW:
	case FIGURE_NUMBER:
	case FIGURE_MONEY:
		return true;
	default:
		return false;
	}
}

static bool is_real(const struct leaf *leaf)
{
	return leaf->figure.kind == FIGURE_AREA || leaf->figure.kind == FIGURE_VOLUME ||
		leaf->figure.kind == FIGURE_WEIGHT || leaf->figure.kind == FIGURE_WATER ||
		leaf->figure.kind == FIGURE_FLOW || leaf->figure.kind == FIGURE_NUMBER;
}

static double number(const struct leaf *leaf, const void *row)
{
	if (!row)
		return 0;
	return is_real(leaf) ? figure_real(&leaf->figure, row) :
		(double)figure_whole(&leaf->figure, row);
}

double leaf_difference(const struct leaf *leaf, const void *old, const void *new)
{
	return number(leaf, new) - number(leaf, old);
}

/* A region by its number in the new survey, or one of its own after all these. */
static int64_t region_number(const struct comparison *comparison, int version, int region)
{
	const struct region_pairs *pairs = &comparison->regions;

	if (region == NO_REGION || version == NEW)
		return region;
	return pairs->new_of[region] != NO_REGION ? pairs->new_of[region] :
		(int64_t)pairs->new->region_count + region;
}

static int64_t whole_of(const struct comparison *comparison, const struct leaf *leaf,
	const struct versioned *at)
{
	int64_t whole = figure_whole(&leaf->figure, at->row);

	return leaf->figure.kind == FIGURE_REGION ?
		region_number(comparison, at->version, (int)whole) : whole;
}

static bool are_near(double a, double b)
{
	return fabs(a - b) <= 1e-9 * fmax(1, fmax(fabs(a), fabs(b)));
}

bool leaf_is_alike(const struct comparison *comparison, const struct leaf *leaf,
	const struct versioned *a, const struct versioned *b)
{
	const struct figure *figure = &leaf->figure;
	const struct figure_table one = { .figures = figure, .count = 1 };

	if (figure->kind == FIGURE_REGION)
		return whole_of(comparison, leaf, a) == whole_of(comparison, leaf, b);
	if (is_real(leaf))
		return are_near(figure_real(figure, a->row), figure_real(figure, b->row));
	return rows_are_alike(a->row, b->row, &one);
}

uint64_t leaf_hash(const struct comparison *comparison, const struct leaf *leaf,
	const struct versioned *at, uint64_t before)
{
	const struct figure *figure = &leaf->figure;
	const struct figure_table one = { .figures = figure, .count = 1 };
	uint64_t hash = figure->kind == FIGURE_REGION ?
		(uint64_t)whole_of(comparison, leaf, at) : rows_hash(at->row, &one);

	return hash_bytes(before, &hash, sizeof hash);
}
