#include "screen/shorten.h"
#include "base/number.h"
#include "base/utf8.h"
#include "screen/control.h"
#include "screen/width.h"

#include <string.h>

/* So many wait for the best of them to go first. More would make a stroke no shorter, and a whole
 * screen slower. */
enum { WAITING_MOST = 16 };

/* Bytes that go out together: text, or what erases or shifts a part of its row. */
struct writing {
	const char *bytes;
	size_t length;
	int row, from, to; /* the cursor is at `from` before it, at `to` after it */
	int left, right;   /* cells that it changes, up to but not with `right` */
	struct pen pen;
	int apart;         /* bytes that it takes to get there from nowhere near, plain */
};

struct frame {
	struct shortener *s;
	struct text *out;
	struct writing waiting[WAITING_MOST];
	int count;
};

struct shortener shortener_of(struct stand size)
{
	return (struct shortener){ .size = size, .wanted = PEN_UNKNOWN, .sent = PEN_UNKNOWN,
		.wanted_at = STAND_UNKNOWN, .at = STAND_UNKNOWN };
}

/* ---- The order ------------------------------------------------------------------------------- */

static void emit(struct frame *frame, const struct writing *writing)
{
	struct shortener *s = frame->s;
	struct stand from = { writing->row, writing->from };

	steer_send(s->at, from, frame->out);
	sgr_send(&s->sent, &writing->pen, frame->out);
	text_add_bytes(frame->out, writing->bytes, writing->length);
	s->at = (struct stand){ writing->row, writing->to };
}

static bool is_same_ground(const struct writing *one, const struct writing *other)
{
	return one->row == other->row && one->left < other->right && other->left < one->right;
}

/* Whether one that came before it changes the same cells. */
static bool must_wait(const struct frame *frame, int index)
{
	for (int i = 0; i < index; i++)
		if (is_same_ground(&frame->waiting[i], &frame->waiting[index]))
			return true;
	return false;
}

/* What is spared where this one goes next. */
static int spared(const struct shortener *s, const struct writing *writing)
{
	struct stand from = { writing->row, writing->from };

	return writing->apart - steer_cost(s->at, from) - sgr_cost(&s->sent, &writing->pen);
}

/* Sooner or later each must be got to: so the one that is got to best from here. */
static void emit_best(struct frame *frame)
{
	int best = 0, most_spared = 0; /* the first never waits */

	for (int i = 0; i < frame->count; i++) {
		int bytes = spared(frame->s, &frame->waiting[i]);

		if ((i == 0 || bytes > most_spared) && !must_wait(frame, i)) {
			best = i;
			most_spared = bytes;
		}
	}
	emit(frame, &frame->waiting[best]);
	frame->count--;
	memmove(&frame->waiting[best], &frame->waiting[best + 1],
		(size_t)(frame->count - best) * sizeof *frame->waiting);
}

static void emit_all(struct frame *frame)
{
	while (frame->count > 0)
		emit_best(frame);
}

/* What came last goes last: what comes next may belong to it, or repeat it. */
static void emit_in_turn(struct frame *frame)
{
	struct writing last;

	if (frame->count == 0)
		return;
	last = frame->waiting[--frame->count];
	emit_all(frame);
	emit(frame, &last);
}

/* Has the terminal's cursor and pen as they would be by now. */
static void catch_up(struct frame *frame)
{
	struct shortener *s = frame->s;

	if (stand_is_known(s->wanted_at))
		steer_send(s->at, s->wanted_at, frame->out);
	s->at = s->wanted_at;
	sgr_send(&s->sent, &s->wanted, frame->out);
}

/* ---- What comes ------------------------------------------------------------------------------ */

/* Goes out as it is. */
static void pass(struct frame *frame, const char *bytes, size_t length)
{
	emit_in_turn(frame);
	catch_up(frame);
	text_add_bytes(frame->out, bytes, length);
}

/* That came last, if nothing came between it and these bytes; else NULL. */
static struct writing *last_before(struct frame *frame, const char *bytes)
{
	struct writing *last = frame->count > 0 ? &frame->waiting[frame->count - 1] : NULL;

	return last && last->bytes + last->length == bytes ? last : NULL;
}

static void hold_back(struct frame *frame, const struct writing *writing)
{
	struct writing *last = last_before(frame, writing->bytes);

	if (last) {
		last->length += writing->length;
		last->to = writing->to;
		last->left = least(last->left, writing->left);
		last->right = most(last->right, writing->right);
		return;
	}
	if (frame->count == WAITING_MOST)
		emit_best(frame);
	frame->waiting[frame->count++] = *writing;
}

/* What is written at a place that is known: its columns, and the cells that it changes. */
static void put(struct frame *frame, const char *bytes, size_t length, int columns, int left,
	int right)
{
	struct shortener *s = frame->s;
	struct writing writing = { bytes, length, s->wanted_at.row, s->wanted_at.column,
		s->wanted_at.column + columns, left, right, s->wanted,
		steer_cost(STAND_UNKNOWN, s->wanted_at) + sgr_cost(&PEN_PLAIN, &s->wanted) };

	hold_back(frame, &writing);
	s->wanted_at.column = writing.to;
	if (writing.to >= s->size.column) {
		emit_in_turn(frame); /* where the cursor is then only the terminal knows */
		s->at = s->wanted_at = STAND_UNKNOWN;
	} else if (!sgr_is_known(&s->wanted)) {
		emit_all(frame);
	}
}

/* A character that has one column; returns its bytes, 0: there is none. */
static size_t text_put(struct frame *frame, const char *bytes, size_t length)
{
	int column = frame->s->wanted_at.column;
	uint32_t code;
	size_t taken = (unsigned char)*bytes < ' ' ? 0 : utf8_decode(bytes, length, &code);

	if (!taken || !width_is_plain(code))
		return 0;
	put(frame, bytes, taken, 1, column, column + 1);
	return taken;
}

/* Up to the last column but one the character itself is sent so often: some terminals take the row
 * for full, and wrap before what comes then. */
static bool repeat_spelled(struct frame *frame, int times)
{
	struct shortener *s = frame->s;
	char character;

	emit_in_turn(frame);
	character = frame->out->bytes[frame->out->length - 1];
	if ((unsigned char)character >= 0x80)
		return false;
	text_add_repeat(frame->out, character, (size_t)times);
	s->wanted_at.column += times;
	s->at = s->wanted_at;
	return true;
}

/* The same character again: it must go on from what waits. Into the last column terminals differ in
 * where the cursor is then. */
static bool repeat_put(struct frame *frame, const char *bytes, const struct control *control)
{
	const struct writing *last = last_before(frame, bytes);
	int column = frame->s->wanted_at.column, times = control_number(control, 0);
	int left = frame->s->size.column - 1 - (column + times);

	if (!last || last->to == last->from || left < 0)
		return false;
	if (left == 0)
		return repeat_spelled(frame, times);
	put(frame, bytes, control->length, times, column, column + times);
	return true;
}

/* Erases or shifts; returns how many bytes, 0: it does something else, or more than that. */
static size_t change_put(struct frame *frame, const char *bytes, size_t length)
{
	struct control control = control_read(bytes, length);
	int column = frame->s->wanted_at.column, end = frame->s->size.column;

	if (control.final == 'b')
		return repeat_put(frame, bytes, &control) ? control.length : 0;
	if (control.final == 'X')
		put(frame, bytes, control.length, 0, column,
			least(column + control_number(&control, 0), end));
	else if (control.final == 'P' || control.final == '@' ||
		 (control.final == 'K' && control.numbers[0] == 0))
		put(frame, bytes, control.length, 0, column, end);
	else if (control.final == 'K' && control.numbers[0] == 1)
		put(frame, bytes, control.length, 0, 0, column + 1);
	else
		return 0;
	return control.length;
}

/* True where all rows scroll together, as they do at rest. */
static bool are_margins_wide(const struct control *control, int rows)
{
	return control_number(control, 0) == 1 &&
		(control->numbers[1] == 0 || control->numbers[1] == rows);
}

/* What is none of these. It may say anything of the pen if it says how things look, and may leave
 * the cursor anywhere but where it only erases. */
static size_t other_pass(struct frame *frame, const char *bytes, size_t length)
{
	struct shortener *s = frame->s;
	struct control control = control_read(bytes, length);
	size_t taken = control_length(bytes, length);

	pass(frame, bytes, taken);
	if (bytes[taken - 1] == 'm' && taken > 1)
		s->wanted = s->sent = PEN_UNKNOWN;
	else if (control.final != 'J')
		s->wanted_at = s->at = STAND_UNKNOWN;
	if (control.final == 'r')
		s->has_margins = !are_margins_wide(&control, s->size.row);
	return taken;
}

/* What was written while nothing was known of the set of characters goes out before that is. */
static size_t pen_take(struct frame *frame, const char *bytes, size_t length)
{
	struct pen *wanted = &frame->s->wanted, before = *wanted;
	size_t taken = sgr_read(wanted, bytes, length);

	if ((!before.set && wanted->set) || (!before.shift && wanted->shift))
		emit_all(frame);
	return taken;
}

static size_t take(struct frame *frame, const char *bytes, size_t length)
{
	struct shortener *s = frame->s;
	size_t taken = pen_take(frame, bytes, length);

	if (!taken && s->size.row > 0 && !s->has_margins)
		taken = steer_read(&s->wanted_at, s->size, bytes, length);
	if (!taken && stand_is_known(s->wanted_at))
		taken = text_put(frame, bytes, length);
	if (!taken && stand_is_known(s->wanted_at))
		taken = change_put(frame, bytes, length);
	if (!taken && !stand_is_known(s->wanted_at)) {
		taken = steer_length(bytes, length); /* however things look */
		text_add_bytes(frame->out, bytes, taken);
	}
	return taken ? taken : other_pass(frame, bytes, length);
}

void shorten(struct shortener *s, const char *bytes, size_t length, struct text *out)
{
	struct frame frame = { .s = s, .out = out };

	for (size_t at = 0; at < length;)
		at += take(&frame, bytes + at, length - at);
	emit_all(&frame);
	catch_up(&frame);
}
