#include "plot/value.h"
#include "base/memory.h"

#include <stdlib.h>
#include <string.h>

const char *const plan_side_words[PLAN_SIDES] = { "left", "top", "right", "bottom" };

bool size_equal(const struct size *a, const struct size *b)
{
	return a->along == b->along && a->across == b->across && a->up == b->up;
}

bool size_is_none(const struct size *size)
{
	return size->along == 0;
}

/* ---- Writing --------------------------------------------------------------------------------- */

static void size_write(struct text *out, const struct size *size, enum units units)
{
	const nm sides[] = { size->along, size->across, size->up };

	if (size_is_none(size)) {
		text_add(out, "none");
		return;
	}
	for (int i = 0; i < 3; i++) {
		text_add(out, i ? " x " : "");
		length_write(out, sides[i], units);
	}
}

static void mix_write(struct text *out, const struct mix *mix)
{
	for (int i = 0; i < mix->count; i++) {
		text_print(out, "%s%s ", i ? ", " : "", mix->parts[i].name);
		text_add_decimal(out, mix->parts[i].thousandths, SHARE_PLACES);
	}
}

static void sides_write(struct text *out, int64_t sides)
{
	const char *between = "";

	if (sides == 0)
		text_add(out, "none");
	for (int i = 0; i < PLAN_SIDES; i++) {
		if (sides >> i & 1) {
			text_print(out, "%s%s", between, plan_side_words[i]);
			between = ", ";
		}
	}
}

void value_write(struct text *out, const struct value_rule *rule, const struct value *value,
	enum units units)
{
	switch (rule->kind) {
	case VALUE_TEXT:
		text_add_quoted(out, value->as.text);
		break;
	case VALUE_LENGTH:
		length_write(out, value->as.length, units);
		break;
	case VALUE_COUNT:
	case VALUE_DECIMAL:
	case VALUE_PERCENT:
		text_add_decimal(out, value->as.number,
			rule->kind == VALUE_COUNT ? 0 : DECIMAL_PLACES);
		text_add(out, rule->kind == VALUE_PERCENT ? " %" : "");
		break;
	case VALUE_CHOICE:
		text_add(out, rule->words[value->as.number]);
		break;
	case VALUE_SIZE:
	case VALUE_CAP:
		size_write(out, &value->as.size, units);
		break;
	case VALUE_AMOUNT:
		amount_write(out, &value->as.amount);
		break;
	case VALUE_MIX:
		mix_write(out, value->as.mix);
		break;
	case VALUE_PLACE:
		text_print(out, "%d,%d", value->as.place.x, value->as.place.y);
		break;
	case VALUE_SIDES:
		sides_write(out, value->as.number);
		break;
	}
}

/* ---- Keeping --------------------------------------------------------------------------------- */

struct value value_copy(enum value_kind kind, const struct value *value)
{
	struct value copy = *value;

	if (value->set && kind == VALUE_TEXT)
		copy.as.text = memory_string(value->as.text);
	if (value->set && kind == VALUE_MIX) {
		struct mix *mix = memory_new(1, sizeof *mix);

		*mix = *value->as.mix;
		copy.as.mix = mix;
	}
	return copy;
}

void value_fini(enum value_kind kind, struct value *value)
{
	/* A set value owns what it points to; const in its type is for readers. */
	if (value->set && kind == VALUE_TEXT)
		free((char *)(uintptr_t)value->as.text);
	if (value->set && kind == VALUE_MIX)
		free((struct mix *)(uintptr_t)value->as.mix);
	*value = (struct value){ .set = false };
}

static bool mix_equal(const struct mix *a, const struct mix *b)
{
	if (a->count != b->count)
		return false;
	for (int i = 0; i < a->count; i++)
		if (strcmp(a->parts[i].name, b->parts[i].name) != 0 ||
			a->parts[i].thousandths != b->parts[i].thousandths)
			return false;
	return true;
}

bool value_equal(enum value_kind kind, const struct value *a, const struct value *b)
{
	if (!a->set || !b->set)
		return a->set == b->set;
	switch (kind) {
	case VALUE_TEXT:
		return strcmp(a->as.text, b->as.text) == 0;
	case VALUE_LENGTH:
		return a->as.length == b->as.length;
	case VALUE_COUNT:
	case VALUE_DECIMAL:
	case VALUE_PERCENT:
	case VALUE_CHOICE:
	case VALUE_SIDES:
		return a->as.number == b->as.number;
	case VALUE_SIZE:
	case VALUE_CAP:
		return size_equal(&a->as.size, &b->as.size);
	case VALUE_AMOUNT:
		return amount_equal(&a->as.amount, &b->as.amount);
	case VALUE_MIX:
		return mix_equal(a->as.mix, b->as.mix);
	case VALUE_PLACE:
		return a->as.place.x == b->as.place.x && a->as.place.y == b->as.place.y;
	}
	return false;
}
