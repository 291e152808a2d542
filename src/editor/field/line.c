#include "editor/field/line.h"
#include "base/memory.h"
#include "base/utf8.h"
#include "editor/field/cluster.h"

#include <stdlib.h>
#include <string.h>
#include <wctype.h>

/* Codes beyond all characters stand for bytes that are part of none. */
enum { BYTE_FIRST = 0x110000 };

void line_fini(struct line *line)
{
	free(line->codes);
	*line = LINE_EMPTY;
}

/* ---- The text -------------------------------------------------------------------------------- */

void line_set(struct line *line, const char *text, size_t most)
{
	size_t left = strlen(text);

	line->count = line->at = 0;
	line->most = most;
	line->is_fresh = true;
	while (left) {
		uint32_t code;
		size_t taken = utf8_decode(text, left, &code);

		if (!taken) {
			code = BYTE_FIRST + (unsigned char)*text;
			taken = 1;
		}
		line->codes = memory_grow(line->codes, line->count, &line->capacity,
			sizeof *line->codes);
		line->codes[line->count++] = code;
		text += taken;
		left -= taken;
	}
}

static void add(const struct line *line, size_t end, struct text *out)
{
	for (size_t i = 0; i < end; i++) {
		uint32_t code = line->codes[i];
		char bytes[UTF8_MOST] = { (char)(code - BYTE_FIRST) };

		text_add_bytes(out, bytes, code >= BYTE_FIRST ? 1 : utf8_encode(code, bytes));
	}
}

void line_add_before(const struct line *line, struct text *out)
{
	add(line, line->at, out);
}

void line_add_all(const struct line *line, struct text *out)
{
	add(line, line->count, out);
}

/* ---- Clusters and words ---------------------------------------------------------------------- */

static bool is_bound(const struct line *line, size_t at)
{
	return at > 0 && at < line->count && cluster_binds(line->codes[at - 1], line->codes[at]);
}

/* The end of the cluster that the character at `at` is in. */
static size_t cluster_end(const struct line *line, size_t at)
{
	if (at < line->count)
		at++;
	while (is_bound(line, at))
		at++;
	return at;
}

/* The start of the cluster that the character before `at` is in. */
static size_t cluster_start(const struct line *line, size_t at)
{
	if (at > 0)
		at--;
	while (is_bound(line, at))
		at--;
	return at;
}

/* From where on Backspace takes. */
static size_t backspace_start(const struct line *line)
{
	size_t start = cluster_start(line, line->at);

	for (size_t i = start; i < line->at; i++)
		if (cluster_is_bond(line->codes[i]))
			return start;
	return line->at ? line->at - 1 : 0;
}

static size_t word_start(const struct line *line)
{
	size_t at = line->at;

	while (at > 0 && iswspace((wint_t)line->codes[at - 1]))
		at--;
	while (at > 0 && !iswspace((wint_t)line->codes[at - 1]))
		at--;
	return at;
}

/* ---- Changes --------------------------------------------------------------------------------- */

/* Takes characters out; the cursor goes to where they were. */
static void take_out(struct line *line, size_t from, size_t to)
{
	if (line->is_fresh) {
		from = 0;
		to = line->count;
	}
	if (to > from)
		memmove(line->codes + from, line->codes + to,
			(line->count - to) * sizeof *line->codes);
	line->count -= to - from;
	line->at = from;
	line->is_fresh = false;
}

size_t line_room(const struct line *line)
{
	size_t held = line->is_fresh ? 0 : line->count;

	return held < line->most ? line->most - held : 0;
}

bool line_insert(struct line *line, const uint32_t *codes, size_t count)
{
	if (count > line_room(line))
		return false;
	if (count == 0)
		return true;
	take_out(line, line->at, line->at);
	if (line->count + count > line->capacity) {
		line->capacity = line->count + count;
		line->codes = memory_resize(line->codes, line->capacity, sizeof *line->codes);
	}
	memmove(line->codes + line->at + count, line->codes + line->at,
		(line->count - line->at) * sizeof *codes);
	memcpy(line->codes + line->at, codes, count * sizeof *codes);
	line->count += count;
	line->at += count;
	return true;
}

/* Where one of these goes to, or how far it erases. */
static size_t goal(const struct line *line, enum line_edit edit)
{
	switch (edit) {
	case LINE_START:
	case LINE_ERASE_BEFORE:
		return 0;
	case LINE_END:
	case LINE_ERASE_REST:
		return line->count;
	case LINE_RIGHT:
	case LINE_DELETE:
		return cluster_end(line, line->at);
	case LINE_BACKSPACE:
		return backspace_start(line);
	case LINE_ERASE_WORD:
		return word_start(line);
	case LINE_LEFT:
		break;
	}
	return cluster_start(line, line->at);
}

void line_edit(struct line *line, enum line_edit edit)
{
	size_t to = goal(line, edit);

	if (edit == LINE_DELETE && is_bound(line, line->at))
		line->at = cluster_start(line, line->at);
	if (edit > LINE_END)
		take_out(line, to < line->at ? to : line->at, to < line->at ? line->at : to);
	line->at = edit > LINE_END ? line->at : to;
	line->is_fresh = false;
}
