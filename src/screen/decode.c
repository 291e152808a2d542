#include "screen/decode.h"
#include "screen/known.h"
#include "screen/mouse.h"
#include "screen/sequence.h"

#include <stdlib.h>
#include <string.h>
#include <wchar.h>

/* A key's bytes may come in pieces; what is pasted, over a line that falters, with longer gaps. */
enum { SILENCE_MS = 80, LONG_SILENCE_MS = 1000, BURST_LEAST = 64,
	REPORT_MOST = 24, INTERRUPT = 3, BELL = 7, CANCEL = 0x18, SUBSTITUTE = 0x1a, MORE = -1 };

void decode_open(struct decoder *d, int escape_ms)
{
	*d = (struct decoder){ .escape_ms = escape_ms > 0 ? escape_ms : SILENCE_MS,
		.paste.text = TEXT_EMPTY };
}

void decode_close(struct decoder *d)
{
	text_fini(&d->paste.text);
}

void decode_learn(struct decoder *d, const char *bytes, int press)
{
	if (!bytes || !*bytes || d->learnt_count == LEARNT_MOST)
		return;
	d->learnt[d->learnt_count].bytes = bytes;
	d->learnt[d->learnt_count++].press = press;
}

unsigned char *decode_room(struct decoder *d, size_t *room)
{
	memmove(d->bytes, d->bytes + d->at, d->end - d->at);
	d->end -= d->at;
	d->at = 0;
	*room = sizeof d->bytes - d->end;
	return d->bytes + d->end;
}

void decode_add(struct decoder *d, size_t count)
{
	d->end += count;
	if (count)
		d->is_quiet = false;
}

bool decode_has_many(const struct decoder *d)
{
	return d->end - d->at >= BURST_LEAST;
}

static const unsigned char *front(const struct decoder *d, size_t *count)
{
	*count = d->end - d->at;
	return d->bytes + d->at;
}

/* ---- Pastes and strings --------------------------------------------------------------------- */

static void within_paste(struct decoder *d, enum within within)
{
	d->within = within;
	d->late_length = 0;
	paste_start(&d->paste);
}

static void paste_take(struct decoder *d, size_t count)
{
	paste_add(&d->paste, d->bytes + d->at, count);
	d->at += count;
}

static int paste_press(struct decoder *d)
{
	return paste_hand_over(&d->paste) ? PRESS_PASTE : PRESS_NOTHING;
}

static int paste_step(struct decoder *d)
{
	size_t count, begun;
	const unsigned char *bytes = front(d, &count);
	const unsigned char *end = memmem(bytes, count, PASTE_END, sizeof PASTE_END - 1);

	if (end) {
		paste_take(d, (size_t)(end - bytes));
		d->at += sizeof PASTE_END - 1;
		d->within = WITHIN_NOTHING;
		return paste_press(d);
	}
	begun = paste_begun(bytes, count);
	if (begun == count)
		return MORE;
	paste_take(d, count - begun);
	return PRESS_NOTHING;
}

static bool ends_string(unsigned char byte)
{
	return byte == BELL || byte == CANCEL || byte == SUBSTITUTE || byte == ESCAPE ||
		byte == INTERRUPT;
}

/* A string ends with BEL or with Esc \; another sequence and Ctrl-C end it too. */
static int string_step(struct decoder *d)
{
	size_t count, at = 0;
	const unsigned char *bytes = front(d, &count);

	while (at < count && !ends_string(bytes[at]))
		at++;
	if (at == 0 && count == 1 && bytes[0] == ESCAPE)
		return MORE;
	if (at < count && !(bytes[at] == ESCAPE && at + 1 == count)) {
		d->within = WITHIN_NOTHING;
		at += bytes[at] != ESCAPE && bytes[at] != INTERRUPT; /* these are read anew */
	}
	d->at += at;
	return PRESS_NOTHING;
}

static int endless_step(struct decoder *d)
{
	size_t count, at = 0;
	const unsigned char *bytes = front(d, &count);

	while (at < count && bytes[at] >= ' ' && bytes[at] < '@')
		at++;
	if (at < count) {
		d->within = WITHIN_NOTHING;
		at += bytes[at] >= '@' && bytes[at] < 0x7f;
	}
	d->at += at;
	return PRESS_NOTHING;
}

/* ---- Sequences ------------------------------------------------------------------------------ */

static bool is_bytes(const unsigned char *bytes, size_t length, const char *wanted)
{
	return strlen(wanted) == length && memcmp(bytes, wanted, length) == 0;
}

static int report_press(struct decoder *d, const unsigned char *bytes, size_t length)
{
	bool is_read;

	if (bytes[2] == 'M') {
		is_read = length == REPORT_BYTES && mouse_read_bytes(bytes + 3, &d->point);
	} else {
		char text[REPORT_MOST] = "";

		if (length - 3 < sizeof text)
			memcpy(text, bytes + 3, length - 3);
		is_read = mouse_read_text(text, &d->point);
	}
	return is_read ? PRESS_POINT : PRESS_NOTHING;
}

/* What a sequence is that goes beyond Esc. */
static int sequence_press(struct decoder *d, const unsigned char *bytes, size_t length)
{
	int press = known_sequence(bytes, length);

	if (press == PRESS_NOTHING)
		press = sequence_keypad(bytes, length);
	if (press != PRESS_NOTHING)
		return press;
	if (is_bytes(bytes, length, PASTE_BEGIN))
		within_paste(d, WITHIN_PASTE);
	else if (sequence_begins_string(bytes, length))
		d->within = WITHIN_STRING;
	else if (length >= 3 && bytes[1] == '[' && (bytes[2] == '<' || bytes[2] == 'M'))
		return report_press(d, bytes, length);
	else if (!is_bytes(bytes, length, PASTE_END) && sequence_is_key(bytes, length))
		return PRESS_OTHER;
	return PRESS_NOTHING;
}

static int sequence_step(struct decoder *d)
{
	size_t count;
	const unsigned char *bytes = front(d, &count);
	size_t length = sequence_length(bytes, count);

	if (length == 0 && count < SEQUENCE_MOST)
		return MORE;
	if (length == 0 || length > SEQUENCE_MOST) {
		d->within = WITHIN_SEQUENCE;
		d->at += SEQUENCE_MOST - 1; /* short of its last byte, if it has one by now */
		return PRESS_NOTHING;
	}
	d->at += length;
	return length == 1 ? PRESS_ESCAPE : sequence_press(d, bytes, length);
}

/* The rest of what silence cut off, where it makes sense with it and is no letter typed after Esc:
 * two bytes at once, or the last one of a paste's mark. The key that it was, PRESS_NOTHING: none,
 * or it is not the rest. */
static int late_step(struct decoder *d)
{
	unsigned char whole[2 * SEQUENCE_MOST];
	size_t count, length, had = d->late_length;
	const unsigned char *bytes = front(d, &count);

	d->late_length = 0;
	count = count < SEQUENCE_MOST ? count : SEQUENCE_MOST;
	memcpy(whole, d->late, had);
	memcpy(whole + had, bytes, count);
	length = sequence_length(whole, had + count);
	if (length < had + (bytes[0] == '~' ? 1 : 2) || !sequence_is_whole(whole, length) ||
	    (length == 3 && !strchr("ABCDFH", whole[2])))
		return PRESS_NOTHING;
	d->at += length - had;
	return sequence_press(d, whole, length);
}

/* ---- Keys ----------------------------------------------------------------------------------- */

/* Some locales read on beyond the last character, where our keys are, and halves of pairs. */
static bool is_character(wchar_t c)
{
	return c < 0x80 || (c >= 0xa0 && c < 0xd800) || (c > 0xdfff && c <= PRESS_FIRST);
}

static int character_step(struct decoder *d)
{
	size_t count, length;
	const unsigned char *bytes = front(d, &count);
	mbstate_t state = { 0 };
	wchar_t character;

	if (known_control(*bytes)) {
		d->at++;
		return known_control(*bytes);
	}
	length = mbrtowc(&character, (const char *)bytes, count, &state);
	if (length == (size_t)-2)
		return MORE;
	if (length == (size_t)-1) {
		d->at++;
		/* Else it is noise on the line, not a letter that only the locale lacks. */
		return MB_CUR_MAX == 1 ? PRESS_UNREAD : PRESS_NOTHING;
	}
	d->at += length ? length : 1;
	if (character < ' ')
		return PRESS_OTHER;
	return is_character(character) ? (int)character : PRESS_NOTHING;
}

static int key_step(struct decoder *d)
{
	size_t count;
	const unsigned char *bytes = front(d, &count);

	if (d->late_length)
		return late_step(d); /* what is left is looked at anew */
	for (int i = 0; i < d->learnt_count; i++) {
		size_t length = strlen(d->learnt[i].bytes);

		if (length <= count && memcmp(bytes, d->learnt[i].bytes, length) == 0) {
			d->at += length;
			return d->learnt[i].press;
		}
	}
	return *bytes == ESCAPE ? sequence_step(d) : character_step(d);
}

static int step(struct decoder *d)
{
	switch (d->within) {
	case WITHIN_PASTE:
		return paste_step(d);
	case WITHIN_BURST:
		paste_take(d, d->end - d->at);
		return PRESS_NOTHING;
	case WITHIN_STRING:
		return string_step(d);
	case WITHIN_SEQUENCE:
		return endless_step(d);
	case WITHIN_NOTHING:
		break;
	}
	return key_step(d);
}

int decode_next(struct decoder *d)
{
	int key = PRESS_NOTHING;

	while (key == PRESS_NOTHING && d->at < d->end)
		key = step(d);
	return key == MORE ? PRESS_NOTHING : key;
}

void decode_burst(struct decoder *d)
{
	size_t count;
	const unsigned char *bytes = front(d, &count);

	if (d->within != WITHIN_NOTHING || !decode_has_many(d))
		return;
	for (int i = 0; i < BURST_LEAST; i++)
		if (bytes[i] == 0x7f || (bytes[i] < ' ' && !strchr("\t\n\r", bytes[i])))
			return;
	within_paste(d, WITHIN_BURST);
}

/* ---- Silence -------------------------------------------------------------------------------- */

/* Of a character, only its first bytes are there. They are no key and do no harm, so its rest may
 * come as late as it likes. */
static bool is_part_of_character(const struct decoder *d)
{
	return d->within == WITHIN_NOTHING && d->at < d->end && d->bytes[d->at] != ESCAPE;
}

/* A sequence, a paste or a string has begun, or was cut off just now. */
static bool is_within(const struct decoder *d)
{
	return d->at < d->end || d->within != WITHIN_NOTHING || d->late_length > 0;
}

bool decode_is_between(const struct decoder *d)
{
	return d->is_quiet || !is_within(d);
}

int decode_patience(const struct decoder *d)
{
	if (!is_within(d))
		return -1;
	if (d->is_quiet)
		return is_part_of_character(d) ? -1 : LONG_SILENCE_MS;
	return d->end == d->at + 1 && d->bytes[d->at] == ESCAPE ?
		d->escape_ms : SILENCE_MS;
}

/* Cuts off a sequence that has begun. Esc alone is a key; Esc and the beginning of a string are
 * two, typed at once; all else may be a key's bytes, of which the rest is lost or late. */
static int sequence_cut(struct decoder *d)
{
	size_t count;
	const unsigned char *bytes = front(d, &count);

	if (sequence_begins_string(bytes, count)) {
		d->at++;
		return PRESS_ESCAPE;
	}
	d->late_length = count < SEQUENCE_MOST ? count : SEQUENCE_MOST;
	memcpy(d->late, bytes, d->late_length);
	d->at = d->end;
	return d->late_length == 1 ? PRESS_ESCAPE : PRESS_NOTHING;
}

int decode_silence(struct decoder *d)
{
	if (d->is_quiet) {
		d->within = WITHIN_NOTHING;
		d->late_length = 0;
		d->at = d->end;
		return PRESS_NOTHING;
	}
	d->is_quiet = true;
	if (d->within == WITHIN_BURST)
		d->within = WITHIN_NOTHING;
	else if (d->within == WITHIN_NOTHING && d->at < d->end && d->bytes[d->at] == ESCAPE)
		return sequence_cut(d);
	else if (d->within != WITHIN_PASTE)
		return PRESS_NOTHING;
	return paste_press(d);
}
