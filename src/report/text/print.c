#include "report/text/print.h"
#include "report/words/first_line.h"

#include <string.h>

void print_titled(const struct report *report)
{
	for (int i = 0; i < takeoff_shown_count; i++) {
		const struct shown *shown = &takeoff_shown[i];
		int count;
		const void *rows;

		if (!shown->title)
			continue;
		rows = shown_rows(shown, report->takeoff, &count);
		if (count == 0)
			continue;
		page_heading(report->out, shown->title);
		print_rows(report, shown->table, rows, count, 0, NULL);
	}
}

struct report report_of(struct sink *out, struct arena *words, const struct plot *plot,
	const struct takeoff *takeoff, const char *name)
{
	return (struct report){ .out = out, .words = words, .plot = plot, .takeoff = takeoff,
		.units = plot_units(plot), .file = name };
}

/* A sheet by itself begins with what it is and its plot. The words are cleared by the caller. */
static struct report sheet_begin(struct sink *out, struct arena *words, const struct plot *plot,
	const struct takeoff *takeoff, const char *name, const char *first_line)
{
	const struct report report = report_of(out, words, plot, takeoff, name);

	sink_print(out, "%s %d\n", first_line, FIRST_LINE_VERSION);
	print_plan_head(&report);
	return report;
}

void report_plan(struct sink *out, const struct plot *plot, const struct takeoff *takeoff,
	const char *name)
{
	struct arena words = ARENA_EMPTY;
	const struct report report = sheet_begin(out, &words, plot, takeoff, name,
		FIRST_LINE_PLAN);

	print_blank(&report);
	print_drawing(&report, NULL);
	arena_clear(&words);
}

void report_setout(struct sink *out, const struct plot *plot, const struct takeoff *takeoff,
	const char *name)
{
	struct arena words = ARENA_EMPTY;
	const struct report report = sheet_begin(out, &words, plot, takeoff, name,
		FIRST_LINE_SETOUT);

	print_blank(&report);
	print_setout_all(&report);
	arena_clear(&words);
}

void report_snags(struct sink *out, const struct plot *plot, const struct takeoff *takeoff,
	const char *name)
{
	struct arena words = ARENA_EMPTY;
	const struct report report = sheet_begin(out, &words, plot, takeoff, name,
		FIRST_LINE_SNAGS);

	if (takeoff->snags.count == 0)
		print_note(&report, "No snags.");
	else
		print_snags(&report);
	arena_clear(&words);
}

void print_section(const struct report *report, const char *words)
{
	if (report->is_whole)
		print_blank(report);
	else
		page_heading(report->out, words);
}

void print_named_section(const struct report *report, const char *words)
{
	print_section(report, words);
	if (report->is_whole)
		print_lines(report, 0, 0, "%s", words);
}

void print_lines(const struct report *report, size_t first, size_t rest, const char *format, ...)
{
	va_list list;

	va_start(list, format);
	page_paragraph(report->out, first, rest, arena_vprint(report->words, format, list));
	va_end(list);
	arena_clear(report->words);
}

__attribute__((format(printf, 2, 0)))
static void note(const struct report *report, const char *format, va_list list)
{
	page_note(report->out, arena_vprint(report->words, format, list));
	arena_clear(report->words);
}

void print_note(const struct report *report, const char *format, ...)
{
	va_list list;

	va_start(list, format);
	note(report, format, list);
	va_end(list);
}

void print_explained(const struct report *report, const char *format, ...)
{
	va_list list;

	va_start(list, format);
	if (!report->is_whole)
		note(report, format, list);
	va_end(list);
}

/* "16"; of what is bought by length, what is bought, and what of it is laid where that is less:
 * "54 ft (53 ft 10 11/16 in laid)". */
static const char *ordered_words(const struct report *report, const struct item *item)
{
	const char *laid = item_amount(report, item, item->order), *bought;

	if (item_unit(item) != UNIT_M)
		return laid;
	bought = tied(report, item_order(report, item));
	return strcmp(bought, laid) == 0 ? laid : say(report, "%s (%s laid)", bought, laid);
}

void print_ordered(const struct report *report, enum section section)
{
	const struct item_list *items = &report->takeoff->items;
	struct text words = TEXT_EMPTY;

	for (size_t i = 0; i < items->count; i++) {
		const struct item *item = &items->list[i];
		const char *remark = item_note(report, item);

		if (item->section == section && item->order > 0)
			text_print(&words, "%s%s %s%s", words.length ? "; " : "",
				item_label(report, item), ordered_words(report, item),
				remark ? say(report, " (%s)", remark) : "");
	}
	if (words.length > 0)
		print_explained(report, "To order in all: %s.", words.bytes);
	text_fini(&words);
}

void print_blank(const struct report *report)
{
	sink_add(report->out, "\n");
}

/* ---- Declared rows --------------------------------------------------------------------------- */

/* Rows of a table: each, or one of each group. */
struct rows {
	struct table table; /* first */
	const struct report *report;
	const struct figure_table *figures;
	const char *rows;
	int count, at;      /* at: the next */
	const struct groups *groups; /* NULL: each row by itself */
	const struct last_column *last;
	const struct figure *shown[TABLE_COLUMNS_MOST];
	int shown_count;
	struct table_column columns[TABLE_COLUMNS_MOST];
};

static const char *cell(const struct rows *rows, const struct figure *figure, const void *row)
{
	const struct group *group = rows->groups ? &rows->groups->list[rows->at] : NULL;

	if (figure->kind == FIGURE_ALIKE)
		return plain_count(rows->report, group ? group->count : 1);
	if (figure->kind == FIGURE_REGION && group)
		return group_words(rows->report, rows->figures, rows->rows, group);
	if ((figure->flags & TEXT_DASHED) && figure_is_none(figure, row))
		return "-";
	return figure_words(rows->report, figure, row);
}

static void fill_cells(struct rows *rows, const void *row, const char *cells[])
{
	for (int i = 0; i < rows->shown_count; i++)
		cells[i] = cell(rows, rows->shown[i], row);
	if (rows->last)
		cells[rows->shown_count] =
			rows->last->cell(rows->report, row, rows->last->context);
}

/* The row to show at a place. */
static int index_of(const struct rows *rows, int at)
{
	return rows->groups ? rows->groups->list[at].members[0] : at;
}

static const char *row_at(const struct rows *rows, int at)
{
	return rows->rows + (size_t)index_of(rows, at) * rows->figures->row_size;
}

static bool next_row(struct table *table, const char *cells[])
{
	struct rows *rows = (struct rows *)table;

	arena_clear(rows->report->words);
	for (; rows->at < rows->count; rows->at++) {
		const char *row = row_at(rows, rows->at);

		if (row_is_left_out(rows->figures, row))
			continue;
		fill_cells(rows, row, cells);
		rows->at++;
		return true;
	}
	rows->at = 0;
	return false;
}

static bool is_words(enum figure_kind kind)
{
	return kind == FIGURE_WORD || kind == FIGURE_TEXT || kind == FIGURE_LETTER ||
		kind == FIGURE_ENTRY || kind == FIGURE_REGION || kind == FIGURE_PLACE;
}

/* Whether it has a column: a dashed one only where there is a figure in it. */
static bool is_shown(const struct rows *rows, const struct figure *figure)
{
	if (!figure->heading || !(figure->flags & TEXT_DASHED))
		return figure->heading != NULL;
	for (int at = 0; at < rows->count; at++) {
		const char *row = row_at(rows, at);

		if (!row_is_left_out(rows->figures, row) && !figure_is_none(figure, row))
			return true;
	}
	return false;
}

static void print(struct rows *rows, size_t indent)
{
	int columns = 0;

	for (int i = 0; i < rows->figures->count; i++) {
		const struct figure *figure = &rows->figures->figures[i];

		if (!is_shown(rows, figure))
			continue;
		rows->shown[columns] = figure;
		rows->columns[columns++] = (struct table_column){ figure->heading,
			(figure->flags & TEXT_WRAPS) ? COLUMN_WRAPS :
			is_words(figure->kind) ? COLUMN_LEFT : COLUMN_RIGHT };
	}
	rows->shown_count = columns;
	if (rows->last)
		rows->columns[columns++] = (struct table_column){ rows->last->heading,
			COLUMN_WRAPS };
	rows->table = (struct table){ .columns = rows->columns, .count = columns,
		.indent = indent, .next = next_row };
	table_print(&rows->table, rows->report->out);
}

void print_rows(const struct report *report, const struct figure_table *table, const void *rows,
	int count, size_t indent, const struct last_column *last)
{
	print(&(struct rows){ .report = report, .figures = table, .rows = rows, .count = count,
		.last = last }, indent);
}

void print_alike(const struct report *report, const struct figure_table *table, const void *rows,
	int count)
{
	struct groups groups = rows_groups(table, rows, count);

	print(&(struct rows){ .report = report, .figures = table, .rows = rows,
		.count = groups.count, .groups = &groups }, 0);
	groups_fini(&groups);
}

/* ---- Words ----------------------------------------------------------------------------------- */

nm saw_length(const struct report *report, nm place, nm fit)
{
	nm unit = report->units == UNITS_IMPERIAL ? NM_PER_INCH / 16 : NM_PER_MM;

	return saw_piece(&(const struct saw){ .fit = fit }, place) / unit * unit;
}

const char *allowed_words(const struct report *report, enum attribute a)
{
	const struct amount *amount = &block_effective(report->takeoff->allow, a)->as.amount;

	return amount_quantity(amount->unit) == QUANTITY_VOLUME ?
		word_volume(report, amount_si(amount)) : word_weight(report, amount_si(amount));
}

const char *cut_words(const struct report *report, const struct cut *cut, nm fit)
{
	struct text words = TEXT_EMPTY;
	int alike;

	for (int i = 0; i < cut->piece_count; i += alike) {
		for (alike = 1; i + alike < cut->piece_count &&
			cut->pieces[i + alike] == cut->pieces[i];)
			alike++;
		text_print(&words, "%s%d%cof%c%s", i ? " + " : "", alike, PAGE_TIE, PAGE_TIE,
			word_inches(report, saw_length(report, cut->pieces[i], fit)));
	}
	return say_text(report, &words);
}

const char *cuts_words(const struct report *report, const struct cut *cuts, int count, nm fit)
{
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < count; i++)
		text_print(&words, "%s%s%cinto %s", i ? "; " : "",
			plain_count(report, cuts[i].blocks), PAGE_TIE,
			cut_words(report, &cuts[i], fit));
	return say_text(report, &words);
}
