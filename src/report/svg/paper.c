#include "report/svg/paper.h"
#include "base/number.h"

#include <ctype.h>
#include <string.h>

nm box_width(struct box box)
{
	return box.right - box.left;
}

nm box_height(struct box box)
{
	return box.bottom - box.top;
}

struct at box_middle(struct box box)
{
	return (struct at){ (box.left + box.right) / 2, (box.top + box.bottom) / 2 };
}

struct box box_around(struct at middle, nm width, nm height)
{
	return (struct box){ middle.x - width / 2, middle.y - height / 2, middle.x + width / 2,
		middle.y + height / 2 };
}

struct box box_grown(struct box box, nm by)
{
	return (struct box){ box.left - by, box.top - by, box.right + by, box.bottom + by };
}

struct box box_common(struct box a, struct box b)
{
	return (struct box){ nm_most(a.left, b.left), nm_most(a.top, b.top),
		nm_least(a.right, b.right), nm_least(a.bottom, b.bottom) };
}

/* ---- Sheets ---------------------------------------------------------------------------------- */

const struct paper_row papers[PAPERS] = {
	[PAPER_A4] = { "a4", "A4", 210 * NM_PER_MM, 297 * NM_PER_MM, UNITS_METRIC },
	[PAPER_A3] = { "a3", "A3", 297 * NM_PER_MM, 420 * NM_PER_MM, UNITS_METRIC },
	[PAPER_LETTER] = { "letter", "Letter", 17 * NM_PER_INCH / 2, 11 * NM_PER_INCH,
		UNITS_IMPERIAL },
	[PAPER_TABLOID] = { "tabloid", "Tabloid", 11 * NM_PER_INCH, 17 * NM_PER_INCH,
		UNITS_IMPERIAL },
};

const char *const paper_words[PAPERS + 1] = { "a4", "a3", "letter", "tabloid", NULL };
const char *const paper_turn_words[PAPER_TURNS + 1] = { "portrait", "landscape", NULL };

/* ---- Scales ---------------------------------------------------------------------------------- */

const int *scales_of(enum units units)
{
	static const int metric[] = { 10, 20, 25, 50, 100, 200, 500, 0 };
	static const int imperial[] = { 12, 24, 48, 60, 96, 120, 240, 360, 480, 600, 0 };

	return units == UNITS_METRIC ? metric : imperial;
}

/* What follows "1:". */
static bool read_ratio(const char *word, int *scale)
{
	*scale = 0;
	for (; isdigit((unsigned char)*word) && *scale <= SCALE_MOST; word++)
		*scale = 10 * *scale + *word - '0';
	return *word == '\0';
}

static bool read_inch(const char *word, int *scale)
{
	struct diag d;
	struct scan s = scan_start(word, strlen(word), 1);
	nm length;

	if (!length_scan(&s, UNITS_IMPERIAL, &length, &d) || !scan_is_done(&s) ||
	    length % NM_PER_INCH != 0)
		return false;
	*scale = (int)nm_least(length / NM_PER_INCH, SCALE_MOST + 1);
	return true;
}

bool scale_read(const char *word, int *scale)
{
	bool is_read = strncmp(word, "1:", 2) == 0 ? read_ratio(word + 2, scale) :
		read_inch(word, scale);

	return is_read && *scale >= SCALE_LEAST && *scale <= SCALE_MOST;
}

void scale_write(struct text *out, int scale, enum units units)
{
	if (units == UNITS_IMPERIAL && scale % 12 == 0)
		text_print(out, "1 in = %d ft (1:%d)", scale / 12, scale);
	else
		text_print(out, "1:%d", scale);
}

nm scaled(nm length, int scale)
{
	nm half = length < 0 ? -(scale / 2) : scale / 2;

	return (length + half) / scale;
}
