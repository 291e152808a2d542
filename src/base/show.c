#include "base/show.h"
#include "base/measure.h"

#include <math.h>

static const double SQ_M_PER_SQ_FT = 0.09290304;

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

const char *show_area_unit(enum units units)
{
	return units == UNITS_IMPERIAL ? "sq ft" : "m2";
}

void show_area_bare(struct text *out, double area, enum units units)
{
	if (units == UNITS_IMPERIAL)
		show_decimal(out, area / SQ_M_PER_SQ_FT, 1);
	else
		show_decimal(out, area, 2);
}

void show_area(struct text *out, double area, enum units units)
{
	show_area_bare(out, area, units);
	text_print(out, " %s", show_area_unit(units));
}

void show_volume_like(struct text *out, double volume, double like, enum units units)
{
	bool is_metric = units == UNITS_METRIC;
	bool is_small = is_metric ? round(like * 1000) < 100 :
		round(like / M3_PER_CUBIC_FOOT * 10) < 270;

	if (is_metric)
		show_decimal(out, is_small ? volume * 1000 : volume, is_small ? 0 : 2);
	else
		show_decimal(out, volume / M3_PER_CUBIC_FOOT / (is_small ? 1 : 27),
			is_small ? 1 : 2);
	if (is_metric)
		text_add(out, is_small ? " L" : " m3");
	else
		text_add(out, is_small ? " cu ft" : " cu yd");
}

void show_volume(struct text *out, double volume, enum units units)
{
	show_volume_like(out, volume, volume, units);
}

void show_weight(struct text *out, double weight, enum units units)
{
	bool is_metric = units == UNITS_METRIC;
	double shown = is_metric ? weight : weight / KG_PER_POUND;
	bool is_small = weight > 0 && round(shown * 10) < 10; /* seed is bought so */

	if (is_small)
		show_decimal(out, shown * (is_metric ? 1000 : 16), is_metric ? 0 : 1);
	else
		show_decimal(out, shown, round(shown * 10) < 1000 ? 1 : 0);
	if (is_metric)
		text_add(out, is_small ? " g" : " kg");
	else
		text_add(out, is_small ? " oz" : " lb");
}

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
