#include "report/panel/page_changed.h"
#include "base/stop.h"
#include "report/compare/bought.h"
#include "report/compare/plan_words.h"

#include <string.h>

/* ---- What is bought -------------------------------------------------------------------------- */

static void bought_lines(struct page_maker *maker, const struct bought_changes *changes,
	bool is_more)
{
	bool is_first = true;

	for (size_t i = 0; i < changes->count; i++) {
		const struct bought_change *change = &changes->list[i];

		if ((change->more > 0) != is_more)
			continue;
		if (is_first)
			page_heading_line(maker, is_more ? "More to buy and to haul" :
				"Left over, or less to haul");
		is_first = false;
		page_figure(maker, bought_goods(change)->name, change->amount);
		if (change->packs || *change->how)
			page_note_line(maker, change->packs ? change->packs : change->how);
	}
}

/* ---- Figures --------------------------------------------------------------------------------- */

/* Differences, each under the heading of its part and row. */
struct listing {
	struct differing differing; /* first */
	struct page_maker *maker;
	struct comparison *comparison;
	const char *part;
	const char *heading; /* the last one */
	int count;
};

static void heading_line(struct listing *listing, const struct difference *difference)
{
	struct page_maker *maker = listing->maker;
	const char *heading = say(&maker->report, "%s%s%s", listing->part,
		*difference->row ? ": " : "", difference->row);

	if (strcmp(heading, listing->heading) == 0)
		return;
	listing->heading = heading;
	if (difference->region == NO_REGION)
		page_heading_line(maker, heading);
	else
		page_heading_at(maker, heading, page_region_place(maker, difference->region));
}

/* "+12"; a row that one version alone has differs by all of it. "": it is no number. */
static const char *difference_words(const struct report *report,
	const struct difference *difference, const struct leaf_words *words)
{
	if (!leaf_is_number(difference->leaf))
		return "";
	if (!difference->rows[OLD])
		return say(report, "+%s", words->versions[NEW]);
	if (!difference->rows[NEW])
		return say(report, "-%s", words->versions[OLD]);
	return words->difference;
}

static void figure_line(struct page_maker *maker, const struct comparison *comparison,
	const struct difference *difference)
{
	const struct leaf *leaf = difference->leaf;
	const struct leaf_words words = leaf_say(comparison, leaf, difference->rows[OLD],
		difference->rows[NEW]);
	const char *by = difference_words(&maker->report, difference, &words);

	if (*by)
		page_figure(maker, leaf->label, by);
	else if (leaf->figure.kind == FIGURE_OBJECT)
		page_note_line(maker, say(&maker->report, "%s: otherwise", leaf->label));
	else
		page_note_line(maker, say(&maker->report, "%s: before %s, now %s", leaf->label,
			words.versions[OLD], words.versions[NEW]));
}

static void list(struct differing *differing, const struct difference *difference)
{
	struct listing *listing = (struct listing *)differing;

	if (listing->count == CHANGED_MOST) {
		differing->is_done = true;
		return;
	}
	listing->count++;
	heading_line(listing, difference);
	if (difference->leaf)
		figure_line(listing->maker, listing->comparison, difference);
	else
		page_note_line(listing->maker, difference->rows[NEW] ? "New." : "Gone.");
}

static void sum_lines(struct listing *listing)
{
	struct comparison *comparison = listing->comparison;
	struct rows versions[VERSIONS];

	listing->part = "In all";
	for (int i = 0; i < VERSIONS; i++)
		versions[i] = sum_rows(comparison->arena, &comparison->versions[i]);
	differences_of_rows(comparison, &listing->differing, "sums", versions);
}

static void part_lines(struct listing *listing)
{
	for (int i = 0; i < takeoff_shown_count && !listing->differing.is_done && !stop_asked();
		i++) {
		listing->part = differences_heading(&listing->maker->report, &takeoff_shown[i]);
		differences_of(listing->comparison, &listing->differing, &takeoff_shown[i]);
	}
	if (listing->differing.is_done)
		page_note_line(listing->maker,
			"and more. parterre compare lists all that differs of two files.");
}

/* ---- The page -------------------------------------------------------------------------------- */

/* Above what is bought: what is left over may be of a bed that cannot be laid out any more. */
static void completeness_lines(struct page_maker *maker, const struct comparison *comparison)
{
	static const char *const notes[] = {
		[OLD] = "INCOMPLETE as saved: beds that are not laid out are in no total.",
		[NEW] = "INCOMPLETE now: beds that are not laid out are in no total." };

	for (int i = 0; i < VERSIONS; i++)
		if (!comparison->versions[i].takeoff->complete)
			page_note_line(maker, notes[i]);
}

static void comparison_lines(struct page_maker *maker, struct comparison *comparison)
{
	struct listing listing = { .differing.found = list, .maker = maker,
		.comparison = comparison, .heading = "" };
	const struct bought_changes changes = bought_changes(comparison);

	if (changes.count > 0)
		completeness_lines(maker, comparison);
	bought_lines(maker, &changes, true);
	bought_lines(maker, &changes, false);
	sum_lines(&listing);
	if (!plan_is_same(comparison)) {
		page_heading_line(maker, "Plan");
		page_note_line(maker, untied(&maker->report, plan_words(comparison)));
	}
	part_lines(&listing);
}

void page_changed(struct page_maker *maker, const struct takeoff *takeoff)
{
	const struct saved *saved = maker->saved;
	struct arena arena = ARENA_EMPTY, words = ARENA_EMPTY;
	struct comparison comparison;
	size_t noted;

	if (saved->note)
		page_note_line(maker, saved->note);
	noted = maker->page->count;
	if (saved->counted) {
		const struct compared versions[VERSIONS] = { [OLD] = *saved->counted,
			[NEW] = { maker->report.plot, takeoff, NULL } };

		comparison_make(&comparison, &arena, &words, versions);
		comparison_lines(maker, &comparison);
		if (maker->page->count == noted)
			page_note_line(maker, "No figure has changed since it was saved.");
	}
	arena_clear(&words);
	arena_clear(&arena);
}
