#include "report/panel/pages.h"
#include "base/show.h"

#include <math.h>
#include <stdarg.h>
#include <stdio.h>
#include <string.h>

static const struct {
	const char *name;
	void (*build)(struct page_maker *maker);
} table[PAGES] = {
	{ "Areas", pages_areas },
	{ "Edges", pages_edges },
	{ "Beds", pages_beds },
	{ "Walls", pages_walls },
	{ "Fill", pages_fill },
	{ "Stone", pages_stone },
	{ "Dig", pages_dig },
	{ "Fence", pages_fence },
	{ "Costs", pages_costs },
	{ "Snags", pages_snags },
};

const char *page_name(int page)
{
	return table[page].name;
}

static bool is_same_figure(const struct line *a, const struct line *b)
{
	return a->kind == LINE_FIGURE && strcmp(a->label, b->label) == 0 &&
		strcmp(a->under, b->under) == 0;
}

/* The line for the same figure at or, the page being a ring, behind *from, which then stands behind it:
 * pages change little, so the first look mostly finds it. NULL where there is none. */
static const struct line *line_find(const struct page *page, const struct line *line, size_t *from)
{
	for (size_t i = 0; i < page->count; i++) {
		size_t at = (*from + i) % page->count;

		if (is_same_figure(&page->lines[at], line)) {
			*from = at + 1;
			return &page->lines[at];
		}
	}
	return NULL;
}

static void page_compare(struct page *page, const struct page *before)
{
	size_t from = 0;

	for (size_t i = 0; i < page->count; i++) {
		struct line *line = &page->lines[i];
		const struct line *old;

		if (line->kind != LINE_FIGURE)
			continue;
		old = line_find(before, line, &from);
		line->is_changed = !old || strcmp(old->value, line->value) != 0;
	}
}

void pages_update(struct pages *pages, const struct takeoff *takeoff, const struct plot *plot)
{
	struct pages new = { .arena = ARENA_EMPTY, .is_filled = true };

	for (int i = 0; i < PAGES; i++) {
		struct page_maker maker = { &new.arena, &new.pages[i], takeoff, plot,
			plot_units(plot) };

		new.pages[i].name = table[i].name;
		table[i].build(&maker);
		if (pages->is_filled)
			page_compare(&new.pages[i], &pages->pages[i]);
	}
	pages_fini(pages);
	*pages = new;
}

void pages_fini(struct pages *pages)
{
	arena_clear(&pages->arena);
	*pages = (struct pages){ .is_filled = false };
}

static void line_add(struct page_maker *maker, enum line_kind kind, const char *label,
	const char *value)
{
	struct page *page = maker->page;
	const struct line *last = page->count ? &page->lines[page->count - 1] : NULL;
	const char *under = !last ? "" : last->kind == LINE_HEADING ? last->label : last->under;

	page->lines = arena_grow(maker->arena, page->lines, page->count, &page->capacity,
		sizeof *page->lines);
	page->lines[page->count++] = (struct line){ .kind = kind, .label = label, .value = value,
		.under = under };
}

__attribute__((format(printf, 2, 0)))
static const char *formatted(struct page_maker *maker, const char *format, va_list list)
{
	char words[1024];

	vsnprintf(words, sizeof words, format, list);
	return arena_print(maker->arena, "%s", words);
}

void pages_heading(struct page_maker *maker, const char *format, ...)
{
	va_list list;

	va_start(list, format);
	line_add(maker, LINE_HEADING, formatted(maker, format, list), "");
	va_end(list);
}

void pages_note(struct page_maker *maker, const char *format, ...)
{
	va_list list;

	va_start(list, format);
	line_add(maker, LINE_NOTE, formatted(maker, format, list), "");
	va_end(list);
}

void pages_figure(struct page_maker *maker, const char *label, struct text *value)
{
	line_add(maker, LINE_FIGURE, arena_print(maker->arena, "%s", label),
		arena_print(maker->arena, "%s", value->bytes));
	text_fini(value);
	*value = TEXT_EMPTY;
}

void pages_length(struct page_maker *maker, const char *label, nm length)
{
	struct text value = TEXT_EMPTY;

	show_length(&value, length, maker->units);
	pages_figure(maker, label, &value);
}

void pages_area(struct page_maker *maker, const char *label, double area)
{
	struct text value = TEXT_EMPTY;

	show_area(&value, area, maker->units);
	pages_figure(maker, label, &value);
}

void pages_volume(struct page_maker *maker, const char *label, double volume)
{
	struct text value = TEXT_EMPTY;

	show_volume(&value, volume, maker->units);
	pages_figure(maker, label, &value);
}

void pages_count(struct page_maker *maker, const char *label, int64_t count)
{
	struct text value = TEXT_EMPTY;

	show_count(&value, count);
	pages_figure(maker, label, &value);
}

void pages_item(struct page_maker *maker, const struct item *item)
{
	struct text value = TEXT_EMPTY;

	switch (item->unit) {
	case UNIT_EACH:
		show_count(&value, llround(item->order));
		break;
	case UNIT_M:
		show_length(&value, llround(item->order * (double)NM_PER_M), maker->units);
		break;
	case UNIT_M2:
		show_area(&value, item->order, maker->units);
		break;
	case UNIT_M3:
		show_volume(&value, item->order, maker->units);
		break;
	case UNIT_KG:
		show_weight(&value, item->order, maker->units);
		break;
	}
	pages_figure(maker, item->label, &value);
}

const char *pages_region(struct page_maker *maker, int region)
{
	const struct region *at = &maker->takeoff->survey.regions[region];
	char name[REGION_NAME_MOST];

	survey_region_name(at, name);
	return arena_print(maker->arena, "%s %c", name, at->entry->letter);
}
