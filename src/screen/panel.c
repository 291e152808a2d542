#include "screen/panel.h"
#include "editor/acts/acts.h"
#include "screen/draw.h"
#include "screen/width.h"

#include <stdio.h>
#include <string.h>

enum { TITLE_ROWS = 1, STAR_COLUMNS = 1, HERE_TITLE = 6 };

/* A page is drawn as a whole: where its figures are not there yet, none is. */
static const struct page *page_shown(const struct editor *editor, int index)
{
	static struct line counting = { .kind = LINE_NOTE, .label = "Counting ...",
		.value = "", .under = "" };
	static const struct page none = { .lines = &counting, .count = 1 };
	const struct page *page = &editor->pages.pages[index];

	return page->is_made && !editor->has_news ? page : &none;
}

/* Where a page's lines are: below the title, above the line that says how much more there is. */
static struct area lines_area(const struct area *page)
{
	struct area area = *page;

	area.row += TITLE_ROWS;
	area.rows -= TITLE_ROWS + 1;
	return area;
}

int panel_page_rows(const struct layout *layout)
{
	return lines_area(&layout->panel).rows;
}

static struct area here_inner(const struct layout *layout)
{
	const struct area *area = &layout->here;

	return (struct area){ area->row, area->column + STAR_COLUMNS, area->rows,
		area->columns - STAR_COLUMNS };
}

int panel_here_rows(const struct layout *layout, const struct text *here)
{
	return width_lines(here->bytes, here_inner(layout).columns);
}

/* A figure takes a second row where its label would be cut. */
static bool is_two_rows(const struct line *line, int columns)
{
	int room = columns - STAR_COLUMNS - 1;

	/* No character has more columns than bytes: most lines of a long page are not measured. */
	if ((int)(strlen(line->label) + strlen(line->value)) <= room)
		return false;
	return width_of(line->label) > room - width_of(line->value);
}

static int line_rows(const struct line *line, int columns)
{
	if (line->kind != LINE_FIGURE)
		return (int)strlen(line->label) <= columns - STAR_COLUMNS ? 1 :
			width_lines(line->label, columns - STAR_COLUMNS);
	return is_two_rows(line, columns) ? 2 : 1;
}

static void draw_line(const struct line *line, const struct area *area, int row)
{
	struct area inner = *area;
	bool is_split = is_two_rows(line, area->columns);

	inner.column += STAR_COLUMNS;
	inner.columns -= STAR_COLUMNS;
	if (line->kind != LINE_FIGURE) {
		draw_wrapped(&inner, row, line->label,
			line->kind == LINE_HEADING ? LOOK_STRONG : LOOK_PLAIN);
		return;
	}
	if (line->is_changed)
		draw_character(area, row, 0, '*', LOOK_PLAIN);
	if (!is_split)
		inner.columns -= width_of(line->value) + 1;
	draw_text(&inner, row, 0, line->label, LOOK_PLAIN);
	draw_right(area, row + is_split, line->value, LOOK_PLAIN);
}

/* Draws the page from its row `top` on; returns how many rows it has in all. */
static int draw_lines(const struct page *page, const struct area *area, int top)
{
	int row = 0;

	for (size_t i = 0; i < page->count; i++) {
		int rows = line_rows(&page->lines[i], area->columns);

		if (row + rows > top && row < top + area->rows)
			draw_line(&page->lines[i], area, row - top);
		row += rows;
	}
	return row;
}

int panel_top_most(const struct editor *editor, const struct layout *layout)
{
	const struct page *page = page_shown(editor, editor->page);
	struct area area = lines_area(&layout->panel);
	int over = -area.rows;

	if (editor->panel == PANEL_HIDDEN || !editor_is_counted(editor))
		return editor->page_top;
	for (size_t i = 0; i < page->count; i++)
		over += line_rows(&page->lines[i], area.columns);
	return over > 0 ? over : 0;
}

static void draw_title(int page, const struct area *panel)
{
	struct arena words = ARENA_EMPTY;

	draw_text(panel, 0, 1, page_name(page), LOOK_STRONG);
	draw_right(panel, 0, arena_print(&words, "%d of %d", page + 1, pages_count()), LOOK_PLAIN);
	arena_clear(&words);
}

static void draw_more(const struct area *panel, int above, int below)
{
	const char *down = acts_key(ACT_FURTHER), *up = acts_key(ACT_BACK);
	struct arena arena = ARENA_EMPTY;
	const char *words = "";

	if (below > 0 && above > 0)
		words = arena_print(&arena, "%s %d below, %s %d above", down, below, up, above);
	else if (below > 0)
		words = arena_print(&arena, "%s %d more below", down, below);
	else if (above > 0)
		words = arena_print(&arena, "%s %d more above", up, above);
	if (width_of(words) > panel->columns - STAR_COLUMNS)
		words = arena_print(&arena, "%s %d  %s %d", down, below, up, above);
	draw_text(panel, panel->rows - 1, 1, words, LOOK_PLAIN);
	arena_clear(&arena);
}

/* In two rows below the plan: one sentence after the other. */
static void draw_here_below(const struct area *area, const struct text *words)
{
	const struct area inner = { area->row, area->column + HERE_TITLE, area->rows,
		area->columns - HERE_TITLE };
	struct text joined = TEXT_EMPTY;

	for (size_t i = 0; i + 1 < words->length; i++)
		if (words->bytes[i] == '\n')
			text_add(&joined, "; ");
		else
			text_add_bytes(&joined, &words->bytes[i], 1);
	draw_text(area, 0, 0, "here", LOOK_STRONG);
	draw_wrapped(&inner, 0, joined.bytes, LOOK_PLAIN);
	text_fini(&joined);
}

static void draw_here_foot(const struct layout *layout, const struct text *words)
{
	const struct area *area = &layout->here, inner = here_inner(layout);
	char more[32];
	int rows;

	draw_rule(area, 0);
	draw_text(area, 0, 2, " here ", LOOK_STRONG);
	rows = draw_wrapped(&inner, 1, words->bytes, LOOK_PLAIN);
	snprintf(more, sizeof more, " %d more ", rows - area->rows);
	if (rows > area->rows)
		draw_right(area, 0, more, LOOK_PLAIN);
}

/* A page from its line `top` on. */
static void draw_page(const struct editor *editor, int page, const struct area *panel, int top)
{
	struct area area = lines_area(panel);
	int rows;

	draw_title(page, panel);
	rows = draw_lines(page_shown(editor, page), &area, top);
	draw_more(panel, top, rows - area.rows - top);
}

/* The page after the panel's, from its start. */
static void draw_second(const struct editor *editor, const struct area *second)
{
	const struct area line = { second->row, second->column - 1, second->rows, 1 };

	draw_upright(&line);
	draw_page(editor, (editor->page + 1) % pages_count(), second, 0);
}

void panel_draw(const struct editor *editor, const struct layout *layout, const struct text *here)
{
	if (editor->panel == PANEL_HIDDEN) {
		draw_here_below(&layout->here, here);
		return;
	}
	draw_upright(&layout->divider);
	draw_page(editor, editor->page, &layout->panel, editor->page_top);
	if (layout->second.columns > 0)
		draw_second(editor, &layout->second);
	draw_here_foot(layout, here);
}
