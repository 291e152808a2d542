#include "report/compare/compare.h"
#include "report/compare/bought.h"
#include "base/spell.h"
#include "report/compare/plan_words.h"
#include "report/words/first_line.h"
#include "report/words/page.h"
#include "report/words/words.h"

#include <string.h>

/* ---- Figures --------------------------------------------------------------------------------- */

/* Differences of one part, as rows of a table. */
struct listing {
	struct differing differing; /* first */
	struct comparison *comparison;
	struct hand_table table;
	struct text row; /* the last one: it is named once */
	bool is_any;
};

static void list(struct differing *differing, const struct difference *difference)
{
	struct listing *listing = (struct listing *)differing;
	struct leaf_words words = { { difference->rows[OLD] ? "there" : "-",
		difference->rows[NEW] ? "there" : "-" }, "" };

	if (difference->leaf)
		words = leaf_say(listing->comparison, difference->leaf, difference->rows[OLD],
			difference->rows[NEW]);
	bool is_again = listing->is_any && strcmp(listing->row.bytes, difference->row) == 0;

	text_clear(&listing->row);
	text_add(&listing->row, difference->row);
	listing->is_any = true;
	TABLE_ROW(&listing->table, is_again ? "" : difference->row,
		difference->leaf ? difference->leaf->label : "", words.versions[OLD],
		words.versions[NEW], words.difference);
}

static struct listing listing_begin(struct comparison *comparison)
{
	static const struct table_column columns[] = {
		{ "Of", COLUMN_WRAPS }, { "Figure", COLUMN_WRAPS }, { "Before", COLUMN_WRAPS },
		{ "Now", COLUMN_WRAPS }, { "Difference", COLUMN_RIGHT },
	};

	return (struct listing){ .differing.found = list, .comparison = comparison,
		.table = hand_table(columns, 5, 0), .row = TEXT_EMPTY };
}

/* Under its heading, if there is any. */
static void listing_print(struct listing *listing, struct sink *out, const char *heading)
{
	if (listing->is_any)
		page_heading(out, heading);
	hand_table_print(&listing->table, out);
	text_fini(&listing->row);
}

static void print_figures(struct sink *out, struct comparison *comparison)
{
	for (int i = 0; i < takeoff_shown_count; i++) {
		struct listing listing = listing_begin(comparison);

		differences_of(comparison, &listing.differing, &takeoff_shown[i]);
		listing_print(&listing, out,
			differences_heading(&comparison->versions[NEW], &takeoff_shown[i]));
		arena_clear(comparison->versions[NEW].words);
	}
}

static void print_sums(struct sink *out, struct comparison *comparison)
{
	struct listing listing = listing_begin(comparison);
	struct rows versions[VERSIONS];

	for (int i = 0; i < VERSIONS; i++)
		versions[i] = sum_rows(comparison->arena, &comparison->versions[i]);
	differences_of_rows(comparison, &listing.differing, "sums", versions);
	listing_print(&listing, out, "In all");
}

/* ---- What is bought -------------------------------------------------------------------------- */

static void print_bought(struct sink *out, const struct comparison *comparison,
	const struct bought_changes *changes, bool is_more)
{
	const struct table_column columns[] = {
		{ "Item", COLUMN_WRAPS }, { "Before", COLUMN_WRAPS }, { "Now", COLUMN_WRAPS },
		{ is_more ? "More" : "Left over", COLUMN_WRAPS },
	};
	struct hand_table table = hand_table(columns, 4, 0);
	bool is_any = false;

	for (size_t i = 0; i < changes->count; i++) {
		const struct bought_change *change = &changes->list[i];
		const struct goods_row *old = change->versions[OLD], *new = change->versions[NEW];

		if ((change->more > 0) != is_more)
			continue;
		is_any = true;
		TABLE_ROW(&table, bought_goods(change)->name, old ? old->packs : "-",
			new ? new->packs : "-",
			bought_change_words(&comparison->versions[NEW], change));
	}
	if (is_any)
		page_heading(out, is_more ? "More to buy and to haul" :
			"Left over, or less to haul");
	hand_table_print(&table, out);
}

/* ---- The whole ------------------------------------------------------------------------------- */

static void print_head(struct sink *out, const struct comparison *comparison)
{
	static const struct table_column columns[] =
		{ { NULL, COLUMN_LEFT }, { NULL, COLUMN_WRAPS } };
	static const char *const names[] = { [OLD] = "Before", [NEW] = "Now" };
	struct hand_table table = hand_table(columns, 2, 0);

	for (int i = 0; i < VERSIONS; i++) {
		const struct report *report = &comparison->versions[i];
		struct text file = TEXT_EMPTY;

		spell(&file, report->file);
		TABLE_ROW(&table, names[i], say(report, "%s%s", say_text(report, &file),
			report->takeoff->complete ? "" :
			", INCOMPLETE: beds that are not laid out are in no total"));
	}
	sink_add(out, "\n");
	hand_table_print(&table, out);
}

void compare_text(struct sink *out, struct comparison *comparison)
{
	struct bought_changes changes;

	if (compare_is_same(comparison)) {
		sink_print(out, "%s %d: nothing differs.\n", FIRST_LINE_COMPARE,
			FIRST_LINE_VERSION);
		return;
	}
	sink_print(out, "%s %d\n", FIRST_LINE_COMPARE, FIRST_LINE_VERSION);
	print_head(out, comparison);
	page_note(out, plan_words(comparison));
	changes = bought_changes(comparison);
	print_bought(out, comparison, &changes, true);
	print_bought(out, comparison, &changes, false);
	print_sums(out, comparison);
	print_figures(out, comparison);
	arena_clear(comparison->versions[NEW].words);
}

/* ---- Whether any ----------------------------------------------------------------------------- */

/* The first is enough. */
static void notice(struct differing *differing, const struct difference *difference)
{
	(void)difference;
	differing->is_done = true;
}

bool compare_is_same(struct comparison *comparison)
{
	struct differing noticing = { .found = notice, .is_done = !plan_is_same(comparison) };

	for (int i = 0; i < takeoff_shown_count && !noticing.is_done; i++)
		differences_of(comparison, &noticing, &takeoff_shown[i]);
	return !noticing.is_done;
}
