#include "base/show.h"
#include "base/measure.h"

#include <math.h>
#include <string.h>

#define M_PER_FOOT 0.3048
#define SQ_M_PER_SQ_FT 0.09290304

enum { SIXTEENTHS_PER_FOOT = 16 * 12 };
#define SIXTEENTH (NM_PER_INCH / 16)

void show_count(struct text *out, int64_t count)
{
	if (count < 0) {
		text_add(out, "-");
		count = -count;
	}
	if (count >= 1000) {
		show_count(out, count / 1000);
		text_print(out, ",%03d", (int)(count % 1000));
	} else {
		text_print(out, "%d", (int)count);
	}
}

void show_decimal(struct text *out, double value, int places)
{
	int64_t unit = 1, units;

	for (int i = 0; i < places; i++)
		unit *= 10;
	units = llround(value * (double)unit);
	if (units < 0)
		text_add(out, "-");
	units = units < 0 ? -units : units;
	show_count(out, units / unit);
	if (places > 0)
		text_print(out, ".%0*d", places, (int)(units % unit));
}

/* The nearest whole number of units, without the length's sign: that is written, where it
 * counts. */
static int64_t units_nearest(struct text *out, nm length, nm unit)
{
	nm size = length < 0 ? -length : length;
	int64_t count = (size + unit / 2) / unit;

	if (length < 0 && count)
		text_add(out, "-");
	return count;
}

static void show_feet(struct text *out, int64_t sixteenths)
{
	if (sixteenths >= SIXTEENTHS_PER_FOOT) {
		show_count(out, sixteenths / SIXTEENTHS_PER_FOOT);
		text_add(out, " ft");
		sixteenths %= SIXTEENTHS_PER_FOOT;
		if (!sixteenths)
			return;
		text_add(out, " ");
	}
	length_write_inches(out, sixteenths * SIXTEENTH);
}

static void show_millimetres(struct text *out, int64_t mm)
{
	if (mm < 1000) {
		text_print(out, "%d mm", (int)mm);
	} else {
		text_add_decimal(out, mm, 3);
		text_add(out, " m");
	}
}

void show_length(struct text *out, nm length, enum units units)
{
	if (units == UNITS_IMPERIAL)
		show_feet(out, units_nearest(out, length, SIXTEENTH));
	else
		show_millimetres(out, units_nearest(out, length, NM_PER_MM));
}

void show_inches(struct text *out, nm length, enum units units)
{
	if (units == UNITS_IMPERIAL)
		length_write_inches(out, units_nearest(out, length, SIXTEENTH) * SIXTEENTH);
	else
		show_length(out, length, units);
}

void show_tape(struct text *out, nm length, enum units units)
{
	if (units == UNITS_METRIC) {
		text_print(out, "%lld", (long long)units_nearest(out, length, NM_PER_MM));
		return;
	}
	length_write_inches(out, units_nearest(out, length, SIXTEENTH) * SIXTEENTH);
	text_cut(out, out->length - strlen(" in"));
}

/* A hundredth of a millimetre. */
#define HUNDREDTH (NM_PER_MM / 100)

void show_piece(struct text *out, nm length, enum units units)
{
	int64_t hundredths;

	if (units == UNITS_IMPERIAL) {
		length_write_inches(out, units_nearest(out, length, NM_PER_64TH) * NM_PER_64TH);
		return;
	}
	hundredths = units_nearest(out, length, HUNDREDTH);
	if (hundredths < 100000) {
		text_add_decimal(out, hundredths, 2);
		text_add(out, " mm");
	} else {
		text_add_decimal(out, hundredths, 5);
		text_add(out, " m");
	}
}

nm show_piece_rounded(nm length, enum units units)
{
	nm unit = units == UNITS_IMPERIAL ? NM_PER_64TH : HUNDREDTH;
	nm size = length < 0 ? -length : length, rounded = (size + unit / 2) / unit * unit;

	return length < 0 ? -rounded : rounded;
}

/* ---- Figures of one unit --------------------------------------------------------------------- */

static const struct show_unit lengths[] = { { "ft", M_PER_FOOT, 1, 2 }, { "m", 1, 1, 3 } };
static const struct show_unit areas[] = { { "sq ft", SQ_M_PER_SQ_FT, 1, 1 }, { "m2", 1, 1, 2 } };
/* By units, large and small. */
static const struct show_unit volumes[][2] = {
	{ { "cu yd", 27 * M3_PER_CUBIC_FOOT, 1, 2 }, { "cu ft", M3_PER_CUBIC_FOOT, 1, 1 } },
	{ { "m3", 1, 1, 2 }, { "L", 1, 1000, 0 } },
};
static const struct show_unit weights[][2] = {
	{ { "lb", KG_PER_POUND, 1, 1 }, { "oz", KG_PER_POUND, 16, 1 } },
	{ { "kg", 1, 1, 1 }, { "g", 1, 1000, 0 } },
};

const struct show_unit *show_length_unit(enum units units)
{
	return &lengths[units];
}

const struct show_unit *show_area_unit(enum units units)
{
	return &areas[units];
}

const struct show_unit *show_volume_unit(double volume, enum units units)
{
	double size = fabs(volume);
	bool is_small = units == UNITS_METRIC ? round(size * 1000) < 100 :
		round(size / M3_PER_CUBIC_FOOT * 10) < 270;

	return &volumes[units][is_small];
}

/* Small ones for seed, which is bought so. */
const struct show_unit *show_weight_unit(double weight, enum units units)
{
	double number = show_number(&weights[units][0], weight);

	return &weights[units][weight > 0 && round(number * 10) < 10];
}

double show_number(const struct show_unit *unit, double figure)
{
	return figure / unit->size * unit->times;
}

void show_area_bare(struct text *out, double area, enum units units)
{
	const struct show_unit *unit = show_area_unit(units);

	show_decimal(out, show_number(unit, area), unit->places);
}

void show_area(struct text *out, double area, enum units units)
{
	show_area_bare(out, area, units);
	text_print(out, " %s", show_area_unit(units)->word);
}

void show_volume_like(struct text *out, double volume, double like, enum units units)
{
	const struct show_unit *unit = show_volume_unit(like, units);

	show_decimal(out, show_number(unit, volume), unit->places);
	text_print(out, " %s", unit->word);
}

void show_volume(struct text *out, double volume, enum units units)
{
	show_volume_like(out, volume, volume, units);
}

void show_weight(struct text *out, double weight, enum units units)
{
	const struct show_unit *unit = show_weight_unit(weight, units);
	double number = show_number(unit, weight);
	bool is_whole = unit == &weights[units][0] && round(number * 10) >= 1000;

	show_decimal(out, number, is_whole ? 0 : unit->places);
	text_print(out, " %s", unit->word);
}

/* ---- Water ----------------------------------------------------------------------------------- */

const char *show_water_unit(enum units units)
{
	return units == UNITS_METRIC ? "L" : "gal";
}

void show_water_bare(struct text *out, double water, enum units units)
{
	double number = units == UNITS_METRIC ? water * 1000 : water / M3_PER_GALLON;

	show_decimal(out, number, round(fabs(number) * 10) < 1000 ? 1 : 0);
}

void show_water(struct text *out, double water, enum units units)
{
	show_water_bare(out, water, units);
	text_print(out, " %s", show_water_unit(units));
}

void show_flow(struct text *out, double flow, enum units units)
{
	show_water(out, flow, units);
	text_add(out, "/h");
}

/* ---- Rulers ---------------------------------------------------------------------------------- */

void show_short(struct text *out, nm length, enum units units)
{
	nm feet = length / NM_PER_FOOT, rest = length % NM_PER_FOOT;

	if (units == UNITS_METRIC) {
		text_add_decimal(out, (length + NM_PER_MM / 2) / NM_PER_MM, 3); /* metres */
		return;
	}
	if (feet || !rest)
		text_print(out, "%lld'", (long long)feet);
	if (rest) {
		text_add_decimal(out, rest * 100 / NM_PER_INCH, 2);
		text_add(out, "\"");
	}
}
