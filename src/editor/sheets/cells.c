#include "editor/sheets/cells.h"
#include "editor/sheets/sheet_ask.h"

#include <string.h>

enum { TYPED_MOST = 60 };

const struct value_rule cells_rule = { .kind = VALUE_TEXT, .least = 1, .most = TYPED_MOST };

/* "3 cells"; a number alone too, `is_bare` then being set. */
static bool count_scan(struct scan *s, int64_t *count, bool *is_bare)
{
	struct scan ahead = *s;
	const char *word;
	size_t length;

	if (!scan_decimal(&ahead, 0, count))
		return false;
	*is_bare = scan_is_done(&ahead);
	word = scan_word(&ahead, &length);
	if (!*is_bare && !scan_word_is(word, length, "cell") &&
	    !scan_word_is(word, length, "cells"))
		return false;
	*s = ahead;
	return scan_is_done(s);
}

static bool refuse_bare(const struct sheet *sheet, int field, int64_t count, struct fault *fault)
{
	const char *sign = strchr(sheet->fields[field].typed, '-') ? "-" : "";
	const char *cells = count == 1 ? "cell" : "cells";

	fault_set(fault, field, "%s: %s%lld has no unit. %s%lld %s? Enter takes it.",
		sheet->fields[field].label, sign, (long long)count, sign, (long long)count, cells);
	text_print(&fault->offer, "%s%lld %s", sign, (long long)count, cells);
	return false;
}

static bool length_read(const struct sheet *sheet, int field, struct scan *s, nm *length,
	struct fault *fault)
{
	struct diag d;

	if (length_scan(s, sheet->units, length, &d) &&
	    (scan_is_done(s) || scan_fail(s, s->at, &d, "nothing more")))
		return true;
	return fault_set(fault, field, "%s: found %s, expected %s, or cells, such as 3 cells",
		sheet->fields[field].label, d.found, d.expected);
}

bool cells_read(const struct sheet *sheet, int field, nm cell, struct cells *cells,
	struct fault *fault)
{
	const char *typed = sheet->fields[field].typed;
	struct scan s = scan_start(typed, strlen(typed), 1);
	bool is_bare = false, is_less = cells->least < 0 && scan_take(&s, '-');
	int64_t count = 0;
	nm length = 0;

	cells->count = 0;
	cells->is_rounded = false;
	if (cells->least <= 0 && !is_less && scan_is_done(&s))
		return true;
	scan_blanks(&s);
	if (!count_scan(&s, &count, &is_bare)) {
		if (!length_read(sheet, field, &s, &length, fault))
			return false;
		count = (length + cell / 2) / cell;
		if (count == 0 && length > 0 && cells->least > 0)
			count = 1;
		cells->is_rounded = count * cell != length;
	}
	if (is_bare)
		return refuse_bare(sheet, field, count, fault);
	count = is_less ? -count : count;
	if (count < cells->least || count > cells->most)
		return fault_set(fault, field, "%s: found %s, expected %d to %d cells",
			sheet->fields[field].label, typed, cells->least, cells->most);
	cells->count = (int)count;
	return true;
}

struct asking {
	struct editor *editor;
	struct cells *cells;
};

static bool one_check(const struct sheet *sheet, int field, const struct value *value,
	struct fault *fault)
{
	const struct asking *asking = sheet->owner;
	struct cells cells = *asking->cells;

	(void)field, (void)value;
	return cells_read(sheet, 0, plot_cell(asking->editor->plot), &cells, fault);
}

static bool one_accept(struct sheet *sheet, struct fault *fault)
{
	const struct asking *asking = sheet->owner;

	return cells_read(sheet, 0, plot_cell(asking->editor->plot), asking->cells, fault);
}

bool cells_ask(struct editor *editor, const char *title, const char *label, struct cells *cells)
{
	struct asking asking = { editor, cells };
	struct report report = editor_report(editor, &editor->words);
	const struct field_spec field = { .label = label, .rule = &cells_rule, .required = true,
		.typed = exact_length(&report, cells->count * plot_cell(editor->plot)) };

	return sheet_ask(editor, &(struct sheet_spec){ .title = title, .done = "lay it",
		.fields = &field, .count = 1, .accept = one_accept, .check = one_check,
		.owner = &asking });
}
