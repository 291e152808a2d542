#include "report/panel/page_lines.h"
#include "base/stop.h"
#include "report/words/figures.h"

static const struct place nowhere = { -1, -1 };

static void line_add(struct page_maker *maker, enum line_kind kind, const char *label,
	const char *value, struct place at)
{
	struct page *page = maker->page;
	const struct line *last = page->count ? &page->lines[page->count - 1] : NULL;
	const char *under = !last ? "" : last->kind == LINE_HEADING ? last->label : last->under;

	page->lines = arena_grow(maker->report.words, page->lines, page->count, &page->capacity,
		sizeof *page->lines);
	page->lines[page->count++] = (struct line){ .kind = kind,
		.label = say(&maker->report, "%s", label),
		.value = say(&maker->report, "%s", value), .under = under, .at = at };
}

void page_heading_at(struct page_maker *maker, const char *words, struct place at)
{
	line_add(maker, LINE_HEADING, words, "", at);
}

void page_heading_line(struct page_maker *maker, const char *words)
{
	page_heading_at(maker, words, nowhere);
}

void page_note_at(struct page_maker *maker, const char *words, struct place at)
{
	line_add(maker, LINE_NOTE, words, "", at);
}

void page_note_line(struct page_maker *maker, const char *words)
{
	page_note_at(maker, words, nowhere);
}

void page_figure(struct page_maker *maker, const char *label, const char *value)
{
	line_add(maker, LINE_FIGURE, label, value, nowhere);
}

void page_item(struct page_maker *maker, const struct item *item)
{
	page_figure(maker, item_label(&maker->report, item),
		plain_item_amount(&maker->report, item, item->order));
}

void page_items(struct page_maker *maker, enum section section, const char *heading)
{
	const struct item_list *items = &maker->report.takeoff->items;
	bool is_first = true;

	for (size_t i = 0; i < items->count; i++) {
		if (items->list[i].section != section)
			continue;
		if (is_first)
			page_heading_line(maker, heading);
		is_first = false;
		page_item(maker, &items->list[i]);
	}
}

bool page_goes_on(struct page_maker *maker, int at, int count)
{
	if (at == PAGE_ROWS_MOST && at < count)
		page_note_line(maker, say(&maker->report,
			"and %s more. The takeoff written to a file has them all.",
			plain_count(&maker->report, count - at)));
	return at < count && at < PAGE_ROWS_MOST && !stop_asked();
}

void page_if_empty(struct page_maker *maker, const char *words)
{
	if (maker->page->count == 0)
		page_note_line(maker, words);
}

const char *page_region(const struct page_maker *maker, int region)
{
	return say(&maker->report, "%s %c", plain_region(&maker->report, region),
		maker->report.takeoff->survey.regions[region].entry->letter);
}

struct place page_region_place(const struct page_maker *maker, int region)
{
	return maker->report.takeoff->survey.regions[region].first_cell;
}

/* ---- Declared rows --------------------------------------------------------------------------- */

static const char *title_part(const struct page_maker *maker, const struct figure *figure,
	const void *row)
{
	int region;

	if (figure->kind != FIGURE_REGION)
		return figure_words(&maker->report, figure, row);
	region = (int)figure_whole(figure, row);
	if (region == NO_REGION)
		return "Open ground";
	return say(&maker->report, "%s %s", page_region(maker, region),
		maker->report.takeoff->survey.regions[region].entry->name);
}

static void add_title(struct page_maker *maker, const struct figure_table *table, const void *row,
	struct place at)
{
	const char *title = NULL;

	for (int i = 0; i < table->count; i++) {
		const struct figure *figure = &table->figures[i];

		if (!(figure->flags & PANEL_TITLE))
			continue;
		if (figure->kind == FIGURE_REGION && figure_whole(figure, row) != NO_REGION)
			at = page_region_place(maker, (int)figure_whole(figure, row));
		title = !title ? title_part(maker, figure, row) :
			say(&maker->report, "%s %s", title, title_part(maker, figure, row));
	}
	if (title)
		page_heading_at(maker, title, at);
}

/* A row within a row: "Gate 1 clear". */
static void add_inner_row(struct page_maker *maker, const struct figure *figure, const void *inner,
	int number)
{
	for (int i = 0; i < figure->table->count; i++) {
		const struct figure *part = &figure->table->figures[i];

		if (part->label)
			page_figure(maker, say(&maker->report, "%s %d %s", figure->label, number,
				part->label), figure_words(&maker->report, part, inner));
	}
}

static void add_inner(struct page_maker *maker, const struct figure *figure, const void *row)
{
	int count;
	const char *inner = figure_rows(figure, row, &count);

	for (int i = 0; page_goes_on(maker, i, count); i++, inner += figure->table->row_size)
		if (!row_is_left_out(figure->table, inner))
			add_inner_row(maker, figure, inner, i + 1);
}

static void add_figure(struct page_maker *maker, const struct figure *figure, const void *row)
{
	if (!figure->label || (figure->flags & PANEL_TITLE) ||
		((figure->flags & PANEL_OPTIONAL) && figure_is_none(figure, row)))
		return;
	if (figure->kind == FIGURE_HEADING)
		page_heading_line(maker, figure->label);
	else if (figure->kind == FIGURE_ROWS)
		add_inner(maker, figure, row);
	else
		page_figure(maker, figure->label, figure_words(&maker->report, figure, row));
}

void page_row_at(struct page_maker *maker, const struct figure_table *table, const void *row,
	struct place at)
{
	if (row_is_left_out(table, row))
		return;
	add_title(maker, table, row, at);
	for (int i = 0; i < table->count; i++)
		add_figure(maker, &table->figures[i], row);
}

void page_row(struct page_maker *maker, const struct figure_table *table, const void *row)
{
	page_row_at(maker, table, row, nowhere);
}

void page_rows(struct page_maker *maker, const struct figure_table *table, const void *rows,
	int count)
{
	const char *row = rows;

	for (int i = 0; page_goes_on(maker, i, count); i++, row += table->row_size)
		page_row(maker, table, row);
}
