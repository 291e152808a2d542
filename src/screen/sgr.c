#include "screen/sgr.h"

#include <stdbool.h>
#include <stdio.h>
#include <string.h>

enum { ESCAPE = 033, ATTRIBUTE_LAST = 9, PARAMETERS_MOST = 32 };

static const char ink_default[] = "39", ground_default[] = "49";

/* ---- Sending --------------------------------------------------------------------------------- */

static void parameter_add(char *parameters, const char *next)
{
	size_t length = strlen(parameters);

	snprintf(parameters + length, (size_t)8 * SGR_COLOUR_MOST - length, "%s%s", length ? ";" : "",
		next);
}

static void attributes_add(char *parameters, int attributes)
{
	for (int i = 1; i <= ATTRIBUTE_LAST; i++)
		if (attributes & 1 << i)
			parameter_add(parameters, (const char[]){ (char)('0' + i), '\0' });
}

/* True where it is to be sent: it is known what is wanted, and not that the terminal has it. */
static bool is_new(const char *wanted, const char *sent)
{
	return *wanted && strcmp(wanted, sent) != 0;
}

/* What changes; an attribute that is to go needs a reset. */
static bool changes(const struct sgr *sgr, char *parameters)
{
	const struct pen *wanted = &sgr->wanted, *sent = &sgr->sent;

	if (wanted->attributes != PEN_UNKNOWN &&
	    (sent->attributes == PEN_UNKNOWN || (sent->attributes & ~wanted->attributes)))
		return false;
	if (wanted->attributes != PEN_UNKNOWN)
		attributes_add(parameters, wanted->attributes & ~sent->attributes);
	if (is_new(wanted->ink, sent->ink))
		parameter_add(parameters, wanted->ink);
	if (is_new(wanted->ground, sent->ground))
		parameter_add(parameters, wanted->ground);
	return true;
}

/* All of it after a reset; only what is wanted whole can be sent so. */
static bool whole(const struct pen *wanted, char *parameters)
{
	if (wanted->attributes == PEN_UNKNOWN || !*wanted->ink || !*wanted->ground)
		return false;
	attributes_add(parameters, wanted->attributes);
	if (strcmp(wanted->ink, ink_default) != 0)
		parameter_add(parameters, wanted->ink);
	if (strcmp(wanted->ground, ground_default) != 0)
		parameter_add(parameters, wanted->ground);
	return true;
}

static void send(struct sgr *sgr, struct text *out)
{
	char some[8 * SGR_COLOUR_MOST] = "", all[8 * SGR_COLOUR_MOST] = "";
	bool has_some = changes(sgr, some), has_all = whole(&sgr->wanted, all);
	bool is_same = has_some && !*some;

	if (sgr->wanted.set && sgr->wanted.set != sgr->sent.set)
		text_print(out, "\033(%c", sgr->wanted.set);
	if (!is_same && has_all && (!has_some || strlen(all) + (*all ? 2 : 0) < strlen(some)))
		text_print(out, "\033[%s%sm", *all ? "0;" : "", all);
	else if (!is_same && has_some)
		text_print(out, "\033[%sm", some);
	sgr->sent = sgr->wanted;
}

/* ---- Reading --------------------------------------------------------------------------------- */

static void colour_set(char *colour, const int *numbers, int count)
{
	char *end = colour + SGR_COLOUR_MOST;

	for (int i = 0; i < count; i++)
		colour += snprintf(colour, (size_t)(end - colour), i ? ";%d" : "%d", numbers[i]);
}

static bool is_between(int number, int low, int high)
{
	return number >= low && number <= high;
}

/* Takes the first of the parameters, and those that belong to it; returns how many, 0: it is none
 * that is known here. */
static int parameter_take(struct pen *pen, const int *numbers, int count)
{
	int first = numbers[0];
	bool is_indexed = (first == 38 || first == 48) && count >= 3 && numbers[1] == 5;

	if (first == 0)
		*pen = (struct pen){ .ink = "39", .ground = "49", .set = pen->set };
	else if (is_between(first, 1, ATTRIBUTE_LAST) && pen->attributes != PEN_UNKNOWN)
		pen->attributes |= 1 << first;
	else if (is_between(first, 30, 37) || is_between(first, 90, 97) || first == 39)
		colour_set(pen->ink, numbers, 1);
	else if (is_between(first, 40, 47) || is_between(first, 100, 107) || first == 49)
		colour_set(pen->ground, numbers, 1);
	else if (is_indexed)
		colour_set(first == 38 ? pen->ink : pen->ground, numbers, 3);
	else
		return 0;
	return is_indexed ? 3 : 1;
}

/* False where it says something that is not known here. */
static bool pen_take(struct pen *pen, const char *parameters, size_t length)
{
	int numbers[PARAMETERS_MOST] = { 0 }, count = 1;
	struct pen before = *pen;

	for (size_t i = 0; i < length; i++) {
		bool is_digit = parameters[i] >= '0' && parameters[i] <= '9';

		if ((!is_digit && parameters[i] != ';') || count == PARAMETERS_MOST ||
		    numbers[count - 1] > 999)
			return false;
		if (is_digit)
			numbers[count - 1] = 10 * numbers[count - 1] + parameters[i] - '0';
		else
			count++;
	}
	for (int i = 0, taken; i < count; i += taken) {
		taken = parameter_take(pen, numbers + i, count - i);
		if (!taken) {
			*pen = before;
			return false;
		}
	}
	return true;
}

/* Of a sequence that begins with ESC [, up to its end. */
static size_t sequence_end(const char *bytes, size_t length)
{
	size_t at = 2;

	while (at < length && bytes[at] >= 0x20 && bytes[at] < 0x40)
		at++;
	return at < length ? at + 1 : length;
}

/* Moves of the cursor, for which it does not matter how things look. */
static size_t move_length(const char *bytes, size_t length)
{
	size_t end;

	if (*bytes == '\r' || *bytes == '\b')
		return 1;
	if (length < 3 || bytes[0] != ESCAPE || bytes[1] != '[')
		return 0;
	end = sequence_end(bytes, length);
	return strchr("ABCDGHd", bytes[end - 1]) ? end : 0;
}

/* The length of a sequence that only says how things look; it is taken. 0: it is another. */
static size_t pen_length(struct sgr *sgr, const char *bytes, size_t length)
{
	size_t end;

	if (length < 3 || bytes[0] != ESCAPE)
		return 0;
	if (bytes[1] == '(') {
		sgr->wanted.set = bytes[2];
		return 3;
	}
	if (bytes[1] != '[')
		return 0;
	end = sequence_end(bytes, length);
	if (bytes[end - 1] == 'm' && pen_take(&sgr->wanted, bytes + 2, end - 3))
		return end;
	return 0;
}

/* Another sequence may say anything of the pen, if it says how things look. */
static size_t other_length(struct sgr *sgr, const char *bytes, size_t length)
{
	size_t end = length >= 2 && bytes[0] == ESCAPE && bytes[1] == '[' ?
		sequence_end(bytes, length) : 1;

	if (bytes[end - 1] == 'm' && end > 1)
		*sgr = SGR_UNKNOWN;
	return end;
}

void sgr_shorten(struct sgr *sgr, const char *bytes, size_t length, struct text *out)
{
	for (size_t at = 0, taken; at < length; at += taken) {
		taken = pen_length(sgr, bytes + at, length - at);
		if (taken)
			continue;
		taken = move_length(bytes + at, length - at);
		if (!taken) {
			send(sgr, out);
			taken = other_length(sgr, bytes + at, length - at);
		}
		text_add_bytes(out, bytes + at, taken);
	}
	send(sgr, out);
}
