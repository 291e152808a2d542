#include "support/shown.h"

#include <check.h>
#include <ctype.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* The panel, with its title, and whatever is drawn over it begin to the right of this line. */
#define DIVIDER "\342\224\202 "

/* A shorter label is followed by two blanks, so none is taken for the beginning of another. */
enum { TITLE_ROW = 1, LABEL_LONGEST = 21 };

char shown_character(struct terminal *t, int row, int column)
{
	return terminal_cell(t, PLAN_TOP + row, PLAN_LEFT + column).text[0];
}

/* The first entry of each class in 256 and in 8 colours. */
static char letter_on(int ground)
{
	static const struct {
		int fine, basic;
		char letter;
	} grounds[] = { { 94, 1, 'b' }, { 254, 7, 'p' }, { 71, 2, 'l' }, { 17, 4, 'S' } };

	for (size_t i = 0; i < sizeof grounds / sizeof *grounds; i++)
		if (ground == grounds[i].fine || ground == grounds[i].basic)
			return grounds[i].letter;
	return '\0';
}

char shown_letter(struct terminal *t, int x, int y)
{
	struct cell cell = terminal_cell(t, PLAN_TOP + y, PLAN_LEFT + 2 * x);
	char letter = letter_on(cell.ground);

	return letter ? letter : cell.text[0];
}

bool shown_is_open(struct terminal *t, int x, int y)
{
	struct cell cell = terminal_cell(t, PLAN_TOP + y, PLAN_LEFT + 2 * x);
	bool is_letter = isalpha((unsigned char)cell.text[0]);

	return cell.ground == -1 || (cell.ground == SHOWN_CURSOR && !is_letter);
}

int shown_ground(struct terminal *t, int x, int y)
{
	return terminal_cell(t, PLAN_TOP + y, PLAN_LEFT + 2 * x).ground;
}

bool shown_mark(struct terminal *t, int x, int y, const char *sign)
{
	return strcmp(terminal_cell(t, PLAN_TOP + y, PLAN_LEFT + 2 * x + 1).text, sign) == 0;
}

bool shown_on_cell(struct terminal *t, int x, int y)
{
	struct cursor at = terminal_cursor(t);

	return at.row == PLAN_TOP + y && at.column == PLAN_LEFT + 2 * x;
}

/* What follows the label in a row that begins with it, right of the divider; NULL: it does not. */
static const char *row_after(struct terminal *t, int row, const char *label)
{
	char words[128];
	const char *found;

	snprintf(words, sizeof words, DIVIDER "%s ", label);
	found = strstr(terminal_row(t, row), words);
	return found ? found + strlen(words) : NULL;
}

int shown_divider(struct terminal *t)
{
	for (int column = PLAN_LEFT; column < 200; column++)
		if (strcmp(terminal_cell(t, TITLE_ROW, column).text, "\342\224\202") == 0)
			return column;
	return -1;
}

bool shown_page(struct terminal *t, const char *name)
{
	const char *after = row_after(t, TITLE_ROW, name);
	int number, count;

	return after && sscanf(after, "%d of %d", &number, &count) == 2;
}

void page_turn_to(struct terminal *t, const char *name)
{
	terminal_keys(t, ";");
	terminal_wait(t, "Which page?");
	terminal_type(t, name);
	terminal_keys(t, "enter");
	for (long deadline = terminal_deadline(); !shown_page(t, name);)
		terminal_read(t, deadline, name);
}

struct text shown_picture(struct terminal *t, int first, int rows, int columns)
{
	struct text picture = TEXT_EMPTY;

	for (int row = first; row < first + rows; row++)
		for (int column = 0; column < columns; column++) {
			struct cell cell = terminal_cell(t, row, column);

			text_print(&picture, "%d,%d: %s %d %d %d\n", row, column, cell.text,
				cell.ink, cell.ground, cell.bold + 2 * cell.underline +
				4 * cell.reverse);
		}
	return picture;
}

bool shown_is(struct terminal *t, const struct text *picture, int first, int rows, int columns)
{
	struct text now = shown_picture(t, first, rows, columns);
	bool is_same = strcmp(now.bytes, picture->bytes) == 0;

	text_fini(&now);
	return is_same;
}

bool shown_at(struct terminal *t, const char *label)
{
	return row_after(t, terminal_cursor(t).row, label) != NULL;
}

/* The row with the field, above the keys of the card; -1: there is none. */
static int field_row(struct terminal *t, const char *label)
{
	for (int row = terminal_find(t, "Esc leave") - 1; row > TITLE_ROW; row--) {
		const char *after = row_after(t, row, label);

		if (after && (*after == ' ' || strlen(label) == LABEL_LONGEST))
			return row;
	}
	return -1;
}

/* Whether the card is whole, the cursor in a field of it: the keys are drawn last, and then the
 * cursor goes there. */
static bool is_whole(struct terminal *t)
{
	return terminal_cursor(t).row < terminal_find(t, "Esc leave");
}

void field_go_to(struct terminal *t, const char *label)
{
	long deadline = terminal_deadline();
	char keys[32];
	int steps;

	while (!is_whole(t) || field_row(t, label) < 0)
		terminal_read(t, deadline, label);
	steps = field_row(t, label) - terminal_cursor(t).row;
	if (steps == 0)
		return;
	snprintf(keys, sizeof keys, "%s x%d", steps > 0 ? "down" : "up", abs(steps));
	terminal_keys(t, keys);
	while (!shown_at(t, label))
		terminal_read(t, deadline, label);
}

void card_drop(struct terminal *t)
{
	static const char question[] = "What was typed is not set";

	terminal_keys(t, "escape");
	terminal_until(t, terminal_shows(t, question) || !terminal_shows(t, "Esc leave"));
	if (!terminal_shows(t, question))
		return;
	terminal_type(t, "Drop");
	terminal_keys(t, "enter");
}

void shown_wait_counted(struct terminal *t)
{
	terminal_until(t, strstr(terminal_row(t, 0), "snag") ||
		strstr(terminal_row(t, 0), "\u25B2"));
	terminal_until(t, !terminal_shows(t, "ounting ..."));
	terminal_settle(t);
	terminal_until(t, !terminal_shows(t, "ounting ..."));
}
