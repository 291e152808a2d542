#include "plot/format/read_block.h"

static bool read_note(struct scan *s, struct block *block, struct diag *d)
{
	char *text;

	if (!scan_quoted(s, 1, NOTE_MOST, &text, d))
		return false;
	block_add_note(block, text);
	return scan_end(s, d);
}

static bool read_attribute(struct scan *s, struct block *block, enum attribute a,
	enum units units, struct diag *d)
{
	struct value value;

	if (!value_scan(s, &attribute_row(a)->rule, units, &value, d))
		return false;
	block_set(block, a, value);
	return scan_end(s, d);
}

/* A longer list of keywords helps nobody: there the manual is named. */
enum { LISTED_MOST = 20 };

/* Fails at an unknown keyword: lists those of the block, and of all that may follow the head. */
static bool fail_keyword(const struct scan *s, size_t start, enum block_kind kind, struct diag *d)
{
	const char *where = block_keyword(kind);
	struct text words = TEXT_EMPTY;

	for (enum attribute a = block_first(kind); a <= block_last(kind); a++) {
		if (a - block_first(kind) == LISTED_MOST / 2 &&
			block_last(kind) - a > LISTED_MOST / 2) {
			text_add_listed(&words, "others in parterre-plot(5)", false);
			break;
		}
		text_add_listed(&words, attribute_row(a)->keyword, false);
	}
	if (kind == BLOCK_FENCE) {
		text_add_listed(&words, "run", false);
		text_add_listed(&words, "gate", false);
	}
	if (kind == BLOCK_HEAD) {
		text_add_listed(&words, block_keyword(BLOCK_ALLOW), false);
		for (enum plot_class class = CLASS_BED; class <= CLASS_FIXTURE; class++)
			text_add_listed(&words, class_word(class), false);
		text_add_listed(&words, "ground", false);
	}
	text_add_listed(&words, "note", true);
	scan_fail(s, start, d, "%s%s%s", where ? where : "", where ? ": " : "", words.bytes);
	text_fini(&words);
	return false;
}

bool block_read_line(struct block *block, struct scan *s, enum units units, struct diag *d)
{
	size_t start = s->at, length;
	const char *word = scan_word(s, &length);
	enum attribute a;

	if (scan_word_is(word, length, "note"))
		return read_note(s, block, d);
	if (!attribute_find(block->kind, word, length, &a))
		return fail_keyword(s, start, block->kind, d);
	if (block_value(block, a)->set)
		return scan_fail(s, start, d, "each keyword once");
	return read_attribute(s, block, a, units, d);
}
