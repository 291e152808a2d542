#include "plot/format/read_block.h"
#include "plot/plot.h"

#include <string.h>

/* A longer list of keywords helps nobody: there the manual is named. */
enum { LISTED_MOST = 20 };

static void list_attributes(struct text *words, enum block_kind kind)
{
	bool has_more = kind != BLOCK_RATES; /* words that are no attributes */

	for (enum attribute a = block_first(kind); a <= block_last(kind); a++) {
		if (a - block_first(kind) == LISTED_MOST / 2 &&
			block_last(kind) - a >= LISTED_MOST / 2) {
			text_add_listed(words, "others in parterre-plot(5)", !has_more);
			break;
		}
		if (a != FENCE_LEAF_FROM) /* it has the keyword of the one before */
			text_add_listed(words, attribute_row(a)->keyword, false);
	}
}

/* Fails at an unknown keyword: lists those of the block, and of all that may follow the head. */
static bool fail_keyword(const struct scan *s, size_t start, enum block_kind kind, struct diag *d)
{
	const char *where = block_keyword(kind);
	struct text words = TEXT_EMPTY;

	list_attributes(&words, kind);
	if (kind == BLOCK_FENCE) {
		text_add_listed(&words, "run", false);
		text_add_listed(&words, "gate", false);
	}
	if (kind == BLOCK_SERVICE)
		text_add_listed(&words, "line", false);
	if (kind == BLOCK_PLANT) {
		text_add_listed(&words, "at", false);
		text_add_listed(&words, "drift", false);
	}
	if (kind == BLOCK_HEAD) {
		text_add_listed(&words, block_keyword(BLOCK_ALLOW), false);
		for (enum plot_class class = CLASS_BED; class <= CLASS_FIXTURE; class++)
			text_add_listed(&words, class_word(class), false);
		text_add_listed(&words, "ground", false);
	}
	if (kind != BLOCK_RATES)
		text_add_listed(&words, "note", true);
	scan_fail(s, start, d, "%s%s%s", where ? where : "", where ? ": " : "", words.bytes);
	text_fini(&words);
	return false;
}

/* Where two attributes have one keyword, the first is a number, the next a word. */
static enum attribute attribute_meant(struct scan *s, enum block_kind kind, enum attribute first)
{
	enum attribute next = first + 1;
	char c;

	scan_blanks(s);
	c = scan_peek(s);
	return first < block_last(kind) && c >= 'a' && c <= 'z' &&
		strcmp(attribute_row(first)->keyword, attribute_row(next)->keyword) == 0 ?
		next : first;
}

bool read_attribute(struct block *block, struct scan *s, enum units units, struct diag *d)
{
	size_t start = s->at;
	struct value value;
	enum attribute a;

	if (!attribute_scan(block->kind, s, &a))
		return fail_keyword(s, start, block->kind, d);
	a = attribute_meant(s, block->kind, a);
	if (block_value(block, a)->set)
		return scan_fail(s, start, d, "each keyword once");
	if (!value_scan(s, &attribute_row(a)->rule, units, &value, d))
		return false;
	block_set(block, a, value);
	return scan_end(s, d);
}

bool read_note(struct notes *notes, struct scan *s, struct diag *d)
{
	char *note;

	if (!scan_quoted(s, 1, NOTE_MOST, &note, d))
		return false;
	notes_add(notes, note);
	return scan_end(s, d);
}

bool read_block_line(struct block *block, struct scan *s, enum units units, struct diag *d)
{
	struct scan ahead = *s;
	size_t length;
	const char *word = scan_word(&ahead, &length);

	if (!scan_word_is(word, length, "note"))
		return read_attribute(block, s, units, d);
	return read_note(&block->notes, &ahead, d);
}

bool fail_indented(const struct scan *s, struct diag *d)
{
	return scan_fail(s, 0, d, "an indented line only inside a block");
}
