#include "screen/sgr.h"
#include "screen/control.h"

enum { ATTRIBUTE_LAST = 9, PARAMETERS_MOST = ATTRIBUTE_LAST + 7 };
enum { INK_OWN = SGR_CODE + 39, GROUND_OWN = SGR_CODE + 49, INK_INDEXED = 38, GROUND_INDEXED = 48 };

/* ---- Sending --------------------------------------------------------------------------------- */

struct parameters {
	int count, numbers[PARAMETERS_MOST];
};

static void add(struct parameters *list, int number)
{
	list->numbers[list->count++] = number;
}

static void add_attributes(struct parameters *list, int attributes)
{
	for (int i = 1; i <= ATTRIBUTE_LAST; i++)
		if (attributes & 1 << i)
			add(list, i);
}

static void add_colour(struct parameters *list, int colour, int indexed)
{
	if (colour >= SGR_CODE) {
		add(list, colour - SGR_CODE);
		return;
	}
	add(list, indexed);
	add(list, 5);
	add(list, colour);
}

/* True where it is to be sent: it is known what is wanted, and not that the terminal has it. */
static bool is_new(int wanted, int sent)
{
	return wanted != SGR_UNKNOWN && wanted != sent;
}

/* What changes; an attribute that is to go needs a reset. */
static bool changes(const struct pen *sent, const struct pen *wanted, struct parameters *list)
{
	if (wanted->attributes != SGR_UNKNOWN &&
	    (sent->attributes == SGR_UNKNOWN || (sent->attributes & ~wanted->attributes)))
		return false;
	if (wanted->attributes != SGR_UNKNOWN)
		add_attributes(list, wanted->attributes & ~sent->attributes);
	if (is_new(wanted->ink, sent->ink))
		add_colour(list, wanted->ink, INK_INDEXED);
	if (is_new(wanted->ground, sent->ground))
		add_colour(list, wanted->ground, GROUND_INDEXED);
	return true;
}

/* All of it after a reset; only what is wanted whole can be sent so. */
static bool whole(const struct pen *wanted, struct parameters *list)
{
	if (!sgr_is_known(wanted))
		return false;
	add(list, 0);
	add_attributes(list, wanted->attributes);
	if (wanted->ink != INK_OWN)
		add_colour(list, wanted->ink, INK_INDEXED);
	if (wanted->ground != GROUND_OWN)
		add_colour(list, wanted->ground, GROUND_INDEXED);
	if (list->count == 1)
		list->count = 0; /* a reset alone goes without saying */
	return true;
}

static int bytes_of(const struct parameters *list)
{
	int bytes = 3 + (list->count ? list->count - 1 : 0);

	for (int i = 0; i < list->count; i++)
		bytes += list->numbers[i] > 99 ? 3 : list->numbers[i] > 9 ? 2 : 1;
	return bytes;
}

/* The shorter of both; false where nothing is to be sent. */
static bool choose(const struct pen *sent, const struct pen *wanted, struct parameters *list)
{
	struct parameters some = { .count = 0 }, all = { .count = 0 };
	bool has_some = changes(sent, wanted, &some), has_all = whole(wanted, &all);

	if ((has_some && !some.count) || (!has_some && !has_all))
		return false;
	*list = has_all && (!has_some || bytes_of(&all) < bytes_of(&some)) ? all : some;
	return true;
}

int sgr_cost(const struct pen *sent, const struct pen *wanted)
{
	struct parameters list;
	int cost = 0;

	if (wanted->set && wanted->set != sent->set)
		cost += 3;
	if (wanted->shift && wanted->shift != sent->shift)
		cost++;
	return cost + (choose(sent, wanted, &list) ? bytes_of(&list) : 0);
}

void sgr_send(struct pen *sent, const struct pen *wanted, struct text *out)
{
	struct parameters list;

	if (wanted->set && wanted->set != sent->set)
		text_print(out, "\033(%c", wanted->set);
	if (wanted->shift && wanted->shift != sent->shift)
		text_add_bytes(out, &wanted->shift, 1);
	if (choose(sent, wanted, &list)) {
		text_add(out, "\033[");
		for (int i = 0; i < list.count; i++)
			text_print(out, i ? ";%d" : "%d", list.numbers[i]);
		text_add(out, "m");
	}
	*sent = *wanted;
}

/* ---- Reading --------------------------------------------------------------------------------- */

static bool is_between(int number, int low, int high)
{
	return number >= low && number <= high;
}

/* Takes the first of the parameters, and those that belong to it; returns how many, 0: it is none
 * that is known here. */
static int parameter_take(struct pen *pen, const int *numbers, int count)
{
	int first = numbers[0];
	bool is_indexed = (first == INK_INDEXED || first == GROUND_INDEXED) && count >= 3 &&
		numbers[1] == 5 && numbers[2] < SGR_CODE;

	if (first == 0)
		*pen = (struct pen){ INK_OWN, GROUND_OWN, 0, pen->set, pen->shift };
	else if (is_between(first, 1, ATTRIBUTE_LAST) && pen->attributes != SGR_UNKNOWN)
		pen->attributes |= 1 << first;
	else if (is_between(first, 30, 37) || is_between(first, 90, 97) || first == 39)
		pen->ink = SGR_CODE + first;
	else if (is_between(first, 40, 47) || is_between(first, 100, 107) || first == 49)
		pen->ground = SGR_CODE + first;
	else if (is_indexed)
		*(first == INK_INDEXED ? &pen->ink : &pen->ground) = numbers[2];
	else
		return 0;
	return is_indexed ? 3 : 1;
}

/* False where it says something that is not known here. */
static bool pen_take(struct pen *pen, const struct control *control)
{
	struct pen before = *pen;

	for (int i = 0, taken; i < control->count; i += taken) {
		taken = parameter_take(pen, control->numbers + i, control->count - i);
		if (!taken) {
			*pen = before;
			return false;
		}
	}
	return true;
}

size_t sgr_read(struct pen *pen, const char *bytes, size_t length)
{
	struct control control;

	if (*bytes == '\016' || *bytes == '\017') {
		pen->shift = *bytes;
		return 1;
	}
	if (length >= 3 && bytes[0] == CONTROL_ESCAPE && bytes[1] == '(') {
		pen->set = bytes[2];
		return 3;
	}
	control = control_read(bytes, length);
	return control.final == 'm' && pen_take(pen, &control) ? control.length : 0;
}

bool sgr_is_known(const struct pen *pen)
{
	return pen->attributes != SGR_UNKNOWN && pen->ink != SGR_UNKNOWN &&
		pen->ground != SGR_UNKNOWN;
}
