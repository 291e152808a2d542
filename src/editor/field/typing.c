#include "editor/field/typing.h"
#include "base/memory.h"
#include "base/utf8.h"
#include "editor/field/cluster.h"

#include <stdlib.h>
#include <string.h>
#include <wctype.h>

/* Codes beyond all characters stand for bytes that are part of none. */
enum { BYTE_FIRST = 0x110000 };

void typing_fini(struct typing *typing)
{
	free(typing->codes);
	*typing = TYPING_EMPTY;
}

/* ---- The text -------------------------------------------------------------------------------- */

void typing_set(struct typing *typing, const char *text, size_t most)
{
	size_t left = strlen(text);

	typing->count = typing->at = 0;
	typing->most = most;
	typing->is_fresh = true;
	while (left) {
		uint32_t code;
		size_t taken = utf8_decode(text, left, &code);

		if (!taken) {
			code = BYTE_FIRST + (unsigned char)*text;
			taken = 1;
		}
		typing->codes = memory_grow(typing->codes, typing->count, &typing->capacity,
			sizeof *typing->codes);
		typing->codes[typing->count++] = code;
		text += taken;
		left -= taken;
	}
}

static void add(const struct typing *typing, size_t end, struct text *out)
{
	for (size_t i = 0; i < end; i++) {
		uint32_t code = typing->codes[i];
		char bytes[UTF8_MOST] = { (char)(code - BYTE_FIRST) };

		text_add_bytes(out, bytes, code >= BYTE_FIRST ? 1 : utf8_encode(code, bytes));
	}
}

void typing_add_before(const struct typing *typing, struct text *out)
{
	add(typing, typing->at, out);
}

void typing_add_all(const struct typing *typing, struct text *out)
{
	add(typing, typing->count, out);
}

/* ---- Clusters and words ---------------------------------------------------------------------- */

static bool is_bound(const struct typing *typing, size_t at)
{
	const uint32_t *codes = typing->codes;

	return at > 0 && at < typing->count && cluster_binds(codes[at - 1], codes[at]);
}

/* The end of the cluster that the character at `at` is in. */
static size_t cluster_end(const struct typing *typing, size_t at)
{
	if (at < typing->count)
		at++;
	while (is_bound(typing, at))
		at++;
	return at;
}

/* The start of the cluster that the character before `at` is in. */
static size_t cluster_start(const struct typing *typing, size_t at)
{
	if (at > 0)
		at--;
	while (is_bound(typing, at))
		at--;
	return at;
}

/* From where on Backspace takes. */
static size_t backspace_start(const struct typing *typing)
{
	size_t start = cluster_start(typing, typing->at);

	for (size_t i = start; i < typing->at; i++)
		if (cluster_is_bond(typing->codes[i]))
			return start;
	return typing->at ? typing->at - 1 : 0;
}

static size_t word_start(const struct typing *typing)
{
	size_t at = typing->at;

	while (at > 0 && iswspace((wint_t)typing->codes[at - 1]))
		at--;
	while (at > 0 && !iswspace((wint_t)typing->codes[at - 1]))
		at--;
	return at;
}

/* ---- Changes --------------------------------------------------------------------------------- */

/* Takes characters out; the cursor goes to where they were. */
static void take_out(struct typing *typing, size_t from, size_t to)
{
	if (typing->is_fresh) {
		from = 0;
		to = typing->count;
	}
	if (to > from)
		memmove(typing->codes + from, typing->codes + to,
			(typing->count - to) * sizeof *typing->codes);
	typing->count -= to - from;
	typing->at = from;
	typing->is_fresh = false;
}

size_t typing_room(const struct typing *typing)
{
	size_t held = typing->is_fresh ? 0 : typing->count;

	return held < typing->most ? typing->most - held : 0;
}

bool typing_insert(struct typing *typing, const uint32_t *codes, size_t count)
{
	if (count > typing_room(typing))
		return false;
	if (count == 0)
		return true;
	take_out(typing, typing->at, typing->at);
	if (typing->count + count > typing->capacity) {
		typing->capacity = typing->count + count;
		typing->codes = memory_resize(typing->codes, typing->capacity, sizeof *codes);
	}
	memmove(typing->codes + typing->at + count, typing->codes + typing->at,
		(typing->count - typing->at) * sizeof *codes);
	memcpy(typing->codes + typing->at, codes, count * sizeof *codes);
	typing->count += count;
	typing->at += count;
	return true;
}

/* Where one of these goes to, or how far it erases. */
static size_t goal(const struct typing *typing, enum typing_edit edit)
{
	switch (edit) {
	case TYPING_START:
	case TYPING_ERASE_BEFORE:
		return 0;
	case TYPING_END:
	case TYPING_ERASE_REST:
		return typing->count;
	case TYPING_RIGHT:
	case TYPING_DELETE:
		return cluster_end(typing, typing->at);
	case TYPING_BACKSPACE:
		return backspace_start(typing);
	case TYPING_ERASE_WORD:
		return word_start(typing);
	case TYPING_LEFT:
		break;
	}
	return cluster_start(typing, typing->at);
}

void typing_edit(struct typing *typing, enum typing_edit edit)
{
	size_t to = goal(typing, edit), at;

	if (edit == TYPING_DELETE && is_bound(typing, typing->at))
		typing->at = cluster_start(typing, typing->at);
	at = typing->at;
	if (edit > TYPING_END)
		take_out(typing, to < at ? to : at, to < at ? at : to);
	else
		typing->at = to;
	typing->is_fresh = false;
}
