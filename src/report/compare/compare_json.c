#include "report/compare/compare.h"
#include "report/compare/bought.h"
#include "prices/book_json.h"
#include "report/compare/plan_words.h"
#include "report/json/json_rows.h"
#include "report/words/first_line.h"
#include "report/words/words.h"

#include <math.h>

/* ---- Figures --------------------------------------------------------------------------------- */

struct printing {
	struct differing differing; /* first */
	struct comparison *comparison;
	struct json_rows rows;
	bool has_place; /* part and row */
};

static cJSON *difference_of(const struct leaf *leaf, const void *const rows[static VERSIONS])
{
	double difference;

	if (!leaf || !leaf_is_number(leaf) || !rows[OLD] || !rows[NEW])
		return cJSON_CreateNull();
	difference = leaf_difference(leaf, rows[OLD], rows[NEW]);
	switch (leaf->figure.kind) {
	case FIGURE_COUNT:
		return json_count(llround(difference));
	case FIGURE_LENGTH:
	case FIGURE_INCHES:
		return json_length(llround(difference));
	case FIGURE_MONEY:
		return json_money(llround(difference));
	default:
		return json_number(difference);
	}
}

/* How something is laid is in the takeoff. Of a row as a whole: whether it is there. */
static cJSON *value_of(const struct comparison *comparison, const struct leaf *leaf, int version,
	const void *row)
{
	if (!leaf)
		return cJSON_CreateBool(row != NULL);
	if (!row || leaf->figure.kind == FIGURE_OBJECT)
		return cJSON_CreateNull();
	return json_figure(comparison->versions[version].takeoff, &leaf->figure, row);
}

static void print_difference(struct differing *differing, const struct difference *difference)
{
	struct printing *printing = (struct printing *)differing;
	const struct report *report = &printing->comparison->versions[NEW];
	const struct leaf *leaf = difference->leaf;
	cJSON *row = cJSON_CreateObject();

	if (printing->has_place) {
		json_put(row, "part", json_text(difference->part));
		json_put(row, "row", json_text(difference->row));
	}
	json_put(row, "key", !leaf ? cJSON_CreateNull() :
		json_text(say(report, "%s%s", difference->path, leaf->key)));
	json_put(row, "old", value_of(printing->comparison, leaf, OLD, difference->rows[OLD]));
	json_put(row, "new", value_of(printing->comparison, leaf, NEW, difference->rows[NEW]));
	json_put(row, "difference", difference_of(leaf, difference->rows));
	json_rows_add(&printing->rows, row);
}

static void json_sums(struct sink *out, struct comparison *comparison)
{
	struct printing printing = { { .found = print_difference }, comparison,
		json_top_open(out, "sums"), false };
	struct rows versions[VERSIONS];

	for (int i = 0; i < VERSIONS; i++)
		versions[i] = sum_rows(comparison->arena, &comparison->versions[i]);
	differences_of_rows(comparison, &printing.differing, "sums", versions);
	json_top_close(&printing.rows);
}

static void json_figures(struct sink *out, struct comparison *comparison)
{
	struct printing printing = { { .found = print_difference }, comparison,
		json_top_open(out, "figures"), true };

	for (int i = 0; i < takeoff_shown_count; i++)
		differences_of(comparison, &printing.differing, &takeoff_shown[i]);
	json_top_close(&printing.rows);
}

/* ---- What is bought -------------------------------------------------------------------------- */

static cJSON *order_of(const struct goods_row *row)
{
	return json_number(row ? goods_order(row) : 0);
}

static void json_bought(struct sink *out, const struct comparison *comparison,
	const struct bought_changes *changes, bool is_more)
{
	struct json_rows rows = json_top_open(out, is_more ? "more" : "left_over");

	for (size_t i = 0; i < changes->count; i++) {
		const struct bought_change *change = &changes->list[i];
		const struct goods_row *goods = bought_goods(change);
		const struct goods_row *old = change->versions[OLD], *new = change->versions[NEW];
		cJSON *row;

		if ((change->more > 0) != is_more)
			continue;
		row = cJSON_CreateObject();
		json_put(row, "id", json_text(goods->id));
		json_put(row, "name", json_text(goods->name));
		json_put(row, "unit", json_text(item_unit_word(goods->unit)));
		json_put(row, "old", order_of(old));
		json_put(row, "new", order_of(new));
		json_put(row, "amount", json_number(fabs(change->more)));
		json_put(row, "old_packs", json_text(old ? old->packs : NULL));
		json_put(row, "new_packs", json_text(new ? new->packs : NULL));
		json_put(row, "packs", json_text(bought_change_words(
			&comparison->versions[NEW], change)));
		json_rows_add(&rows, row);
	}
	json_top_close(&rows);
}

/* ---- Plans ----------------------------------------------------------------------------------- */

static void json_plan(struct sink *out, const char *key, const struct report *report)
{
	const struct survey *survey = &report->takeoff->survey;
	cJSON *object = cJSON_CreateObject();

	json_put(object, "units", json_text(plot_units(report->plot) == UNITS_METRIC ?
		"metric" : "imperial"));
	json_put(object, "cell_m", json_length(survey->cell));
	json_put(object, "columns", json_count(survey->columns));
	json_put(object, "rows", json_count(survey->rows));
	json_put(object, "complete", cJSON_CreateBool(report->takeoff->complete));
	sink_print(out, ",\n  \"%s\": ", key);
	json_print(out, object);
}

static void region_add(struct json_rows *rows, const struct comparison *comparison, int old,
	int new, const char *change)
{
	const struct report *versions = comparison->versions;
	cJSON *row = cJSON_CreateObject();

	json_put(row, "change", json_text(change));
	json_put(row, "old", old == NO_REGION ? cJSON_CreateNull() :
		json_text(region_title(&versions[OLD], old)));
	json_put(row, "new", new == NO_REGION ? cJSON_CreateNull() :
		json_text(region_title(&versions[NEW], new)));
	json_rows_add(rows, row);
	arena_clear(versions[NEW].words);
}

static void json_regions(struct sink *out, const struct comparison *comparison)
{
	static const char *const words[REGION_CHANGES] = {
		[REGION_CAME] = "came", [REGION_CHANGED] = "changed",
		[REGION_RENUMBERED] = "renumbered",
	};
	const struct region_pairs *pairs = &comparison->regions;
	struct json_rows rows = json_top_open(out, "regions");

	for (int i = 0; i < pairs->new->region_count; i++) {
		enum region_change change = region_change(pairs, i);

		if (change != REGION_SAME)
			region_add(&rows, comparison, pairs->old_of[i], i, words[change]);
	}
	for (int i = 0; i < pairs->old->region_count; i++)
		if (pairs->new_of[i] == NO_REGION)
			region_add(&rows, comparison, i, NO_REGION, "went");
	json_top_close(&rows);
}

void compare_json(struct sink *out, struct comparison *comparison)
{
	struct bought_changes changes;

	json_start();
	sink_print(out, "{\n  \"format\": \"%s\", \"version\": %d, \"same\": %s",
		FIRST_LINE_COMPARE_JSON, FIRST_LINE_VERSION,
		compare_is_same(comparison) ? "true" : "false");
	json_plan(out, "old", &comparison->versions[OLD]);
	json_plan(out, "new", &comparison->versions[NEW]);
	json_regions(out, comparison);
	changes = bought_changes(comparison);
	json_bought(out, comparison, &changes, true);
	json_bought(out, comparison, &changes, false);
	json_sums(out, comparison);
	json_figures(out, comparison);
	sink_add(out, "\n}\n");
	arena_clear(comparison->versions[NEW].words);
}
