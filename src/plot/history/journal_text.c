#include "plot/history/journal_text.h"
#include "base/hash.h"
#include "base/scan.h"
#include "plot/format/format.h"
#include "plot/history/change.h"

#include <inttypes.h>
#include <stdlib.h>
#include <string.h>

enum { HASH_DIGITS = 16 };

static const char first_line[] = "parterre-journal 1\n", plot_word[] = "plot", step_word[] = "step";

bool plot_stamp_equal(const struct plot_stamp *a, const struct plot_stamp *b)
{
	if (!a->exists || !b->exists)
		return a->exists == b->exists;
	return a->written.tv_sec == b->written.tv_sec &&
		a->written.tv_nsec == b->written.tv_nsec && a->length == b->length &&
		a->hash == b->hash;
}

static void stamp_write(struct text *out, const struct plot_stamp *stamp)
{
	if (stamp->exists)
		text_print(out, "stamp %lld %ld %zu %016" PRIx64 "\n",
			(long long)stamp->written.tv_sec, stamp->written.tv_nsec, stamp->length,
			stamp->hash);
	else
		text_add(out, "stamp none\n");
}

/* ---- Records --------------------------------------------------------------------------------- */

/* Appends a record's first line; what is returned is its checksum. */
static uint64_t head_write(struct text *out, uint64_t before, const char *word,
	const struct text *body)
{
	size_t start = out->length;

	text_print(out, "%s %zu ", word, body->length);
	before = hash_bytes(before, out->bytes + start, out->length - start);
	before = hash_bytes(before, body->bytes, body->length);
	text_print(out, "%016" PRIx64 "\n", before);
	return before;
}

static uint64_t record_write(struct text *out, uint64_t before, const char *word,
	const struct text *body)
{
	before = head_write(out, before, word, body);
	text_add_bytes(out, body->bytes, body->length);
	return before;
}

uint64_t journal_text_begin(struct text *out, const struct plot_stamp *stamp,
	const struct plot *plot)
{
	struct text words = TEXT_EMPTY;
	size_t start = out->length;
	uint64_t sum;

	text_add(out, first_line);
	stamp_write(out, stamp);
	format_write(plot, &words);
	sum = hash_bytes(HASH_EMPTY, out->bytes + start, out->length - start);
	sum = record_write(out, sum, plot_word, &words);
	text_fini(&words);
	return sum;
}

uint64_t journal_text_step(struct text *out, uint64_t before, const struct text *words)
{
	return record_write(out, before, step_word, words);
}

/* ---- Reading --------------------------------------------------------------------------------- */

struct reader {
	const struct text *text;
	size_t at;
	uint64_t sum;
};

static struct scan line_next(struct reader *r)
{
	const char *start = r->text->bytes + r->at;
	const char *end = memchr(start, '\n', r->text->length - r->at);
	size_t length = end ? (size_t)(end - start) : r->text->length - r->at;

	r->at += length + (end != NULL);
	return scan_start(start, length, 0);
}

/* Takes the next record where it is whole, else nothing: its first line must be to the letter what
 * would be written of its body. */
static bool record_take(struct reader *r, const char *word, struct text *body)
{
	struct reader ahead = *r;
	struct scan s = line_next(&ahead);
	struct text head = TEXT_EMPTY;
	size_t length;
	int64_t bytes;
	bool is_whole;

	scan_word(&s, &length);
	scan_blanks(&s);
	if (!scan_decimal(&s, 0, &bytes) || (uint64_t)bytes > r->text->length - ahead.at)
		return false;
	*body = (struct text){ r->text->bytes + ahead.at, (size_t)bytes, 0 };
	ahead.sum = head_write(&head, r->sum, word, body);
	is_whole = head.length == ahead.at - r->at &&
		memcmp(head.bytes, r->text->bytes + r->at, head.length) == 0;
	text_fini(&head);
	if (!is_whole)
		return false;
	*r = ahead;
	r->at += body->length;
	return true;
}

static bool stamp_read(const char *line, struct plot_stamp *stamp)
{
	static const char none[] = "stamp none\n", some[] = "stamp ";
	char *end;

	*stamp = (struct plot_stamp){ .exists = strncmp(line, none, strlen(none)) != 0 };
	if (!stamp->exists)
		return true;
	if (strncmp(line, some, strlen(some)) != 0)
		return false;
	stamp->written.tv_sec = (time_t)strtoll(line + strlen(some), &end, 10);
	stamp->written.tv_nsec = strtol(end, &end, 10);
	stamp->length = strtoull(end, &end, 10);
	stamp->hash = strtoull(end, &end, 16);
	return *end == '\n';
}

/* The first two lines; their bytes are held by the plot's checksum. */
static bool top_read(struct reader *r, struct plot_stamp *stamp, const char **why)
{
	const struct text *text = r->text;
	size_t first = strlen(first_line), version = strlen("parterre-journal ");

	*why = text->length == 0 ? "it is empty" :
		text->length < version || memcmp(text->bytes, first_line, version) != 0 ?
		"it is no journal" : "another version of the program wrote it";
	if (text->length < first || memcmp(text->bytes, first_line, first) != 0)
		return false;
	*why = "its beginning is damaged";
	r->at = first;
	line_next(r);
	r->sum = hash_bytes(HASH_EMPTY, text->bytes, r->at);
	return stamp_read(text->bytes + first, stamp);
}

/* A step's first line, from its word on. */
static bool is_step_head(const char *at, const char *end)
{
	static const char digits[] = "0123456789abcdef";
	const char *line_end = memchr(at, '\n', (size_t)(end - at));
	struct scan s = scan_start(at, line_end ? (size_t)(line_end - at) : 0, 0);
	size_t length;
	const char *word;
	int64_t bytes;

	scan_word(&s, &length);
	scan_blanks(&s);
	if (!scan_decimal(&s, 0, &bytes))
		return false;
	word = scan_word(&s, &length);
	return length == HASH_DIGITS && strspn(word, digits) == HASH_DIGITS && s.at == s.length;
}

/* Whether a step comes after the one here, which cannot be read; even the end of its line before
 * may be spoilt. */
static bool has_later_step(const struct reader *r)
{
	const char *at = r->text->bytes + r->at, *end = r->text->bytes + r->text->length;

	while (at < end && (at = memmem(at + 1, (size_t)(end - at) - 1, step_word,
		strlen(step_word))))
		if (is_step_head(at, end))
			return true;
	return false;
}

enum journal_state journal_text_read(const struct text *text, struct plot *plot,
	struct plot_stamp *stamp, const char **why)
{
	struct reader r = { .text = text };
	struct text body;
	struct diag d;

	if (!top_read(&r, stamp, why) || !record_take(&r, plot_word, &body) ||
	    !format_read(body.bytes, body.length, plot, &d))
		return JOURNAL_UNREADABLE;
	while (r.at < text->length) {
		size_t start = r.at;

		if (record_take(&r, step_word, &body) && change_read(body.bytes, body.length, plot))
			continue;
		r.at = start;
		*why = "a step in it is damaged";
		return has_later_step(&r) ? JOURNAL_DAMAGED : JOURNAL_WHOLE;
	}
	return JOURNAL_WHOLE;
}
