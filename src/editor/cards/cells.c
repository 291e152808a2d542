#include "editor/cards/cells.h"
#include "editor/cards/card_ask.h"

#include <string.h>

enum { TYPED_MOST = 60 };

const struct value_rule cells_rule = { .kind = VALUE_TEXT, .least = 1, .most = TYPED_MOST };

/* "3 cells". */
static bool count_scan(struct scan *s, int64_t *count)
{
	struct scan ahead = *s;
	const char *word;
	size_t length;

	if (!scan_decimal(&ahead, 0, count))
		return false;
	word = scan_word(&ahead, &length);
	if (!scan_word_is(word, length, "cell") && !scan_word_is(word, length, "cells"))
		return false;
	*s = ahead;
	return scan_is_done(s);
}

static bool length_read(const struct card *card, int at, struct scan *s, nm *length,
	struct fault *fault)
{
	const struct field *field = &card->fields[at];
	const struct asked asked = { field->rule, card->units, field->span, field->is_cells };
	struct text why = TEXT_EMPTY;
	struct diag d;
	bool is_read = length_scan(s, card->units, length, &d) &&
		(scan_is_done(s) || scan_fail(s, s->at, &d, "nothing more"));

	if (!is_read && strict_doubt(&asked, field->typed, &why))
		fault_set(fault, at, "%s: %s", field->label, why.bytes);
	else if (!is_read)
		fault_set(fault, at, "%s: found %s, expected %s, or cells, such as 3 cells",
			field->label, d.found, d.expected);
	text_fini(&why);
	return is_read;
}

/* words: of the field, put strictly. */
static bool out_of_range(const struct card *card, int at, const char *words,
	const struct cells *cells, nm cell, struct fault *fault)
{
	struct text range = TEXT_EMPTY;

	for (int i = 0; i < 2; i++) {
		text_add(&range, i ? " to " : "");
		length_write(&range, (i ? cells->most : cells->least) * cell, card->units);
	}
	fault_set(fault, at, "%s: found %s, expected %s, %d to %d cells%s%s",
		card->fields[at].label, words, range.bytes, cells->least, cells->most,
		cells->limit ? ": " : "", cells->limit ? cells->limit : "");
	text_fini(&range);
	return false;
}

bool cells_check(const struct card *card, int at, const struct value *value, nm cell,
	struct cells *cells, struct fault *fault)
{
	const char *words = value->set ? value->as.text : "";
	struct scan s = scan_start(words, strlen(words), 1);
	bool is_less = cells->least < 0 && scan_take(&s, '-');
	int64_t count = 0;
	nm length = 0;

	cells->count = 0;
	cells->is_rounded = false;
	if (cells->least <= 0 && !is_less && scan_is_done(&s))
		return true;
	scan_blanks(&s);
	if (!count_scan(&s, &count)) {
		if (!length_read(card, at, &s, &length, fault))
			return false;
		count = (length + cell / 2) / cell;
		if (count == 0 && length > 0 && cells->least > 0)
			count = 1;
		cells->is_rounded = count * cell != length;
	}
	count = is_less ? -count : count;
	if (count < cells->least || count > cells->most)
		return out_of_range(card, at, words, cells, cell, fault);
	cells->count = (int)count;
	return true;
}

bool cells_read(const struct card *card, int at, nm cell, struct cells *cells,
	struct fault *fault)
{
	struct value value;
	bool is_read = card_read(card, at, &value, fault) &&
		cells_check(card, at, &value, cell, cells, fault);

	value_fini(VALUE_TEXT, &value);
	return is_read;
}

struct asking {
	struct editor *editor;
	struct cells *cells;
};

static bool one_check(const struct card *card, int field, const struct value *value,
	struct fault *fault)
{
	const struct asking *asking = card->owner;
	struct cells cells = *asking->cells;

	return cells_check(card, field, value, plot_cell(asking->editor->plot), &cells, fault);
}

static bool one_accept(struct card *card, struct fault *fault)
{
	const struct asking *asking = card->owner;

	return cells_read(card, 0, plot_cell(asking->editor->plot), asking->cells, fault);
}

bool cells_ask(struct editor *editor, const struct cells_question *question, struct cells *cells)
{
	struct asking asking = { editor, cells };
	struct report report = editor_report(editor, &editor->words);
	const struct field_spec field = { .label = question->label, .meaning = question->meaning,
		.rule = &cells_rule, .required = true, .is_cells = true, .span = SPAN_PLAN,
		.typed = exact_length(&report, cells->count * plot_cell(editor->plot)) };

	return card_ask(editor, &(struct card_spec){ .title = question->title,
		.done = question->done, .fields = &field, .count = 1, .accept = one_accept,
		.check = one_check, .owner = &asking });
}
