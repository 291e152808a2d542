#include "plot/format/read_later.h"
#include "plot/format/read_around.h"
#include "plot/format/read_block.h"
#include "plot/format/read_levels.h"
#include "plot/format/read_plant.h"

#include <stdlib.h>

struct later_reader later_reader_of(struct plot *plot)
{
	return (struct later_reader){ .plot = plot, .fence_reader.ground = &plot->ground };
}

void later_reader_fini(struct later_reader *r)
{
	fence_reader_fini(&r->fence_reader);
	cell_set_fini(&r->taken);
}

/* ---- Lines that are not indented ------------------------------------------------------------- */

static bool read_fence(struct later_reader *r, struct scan *s, struct diag *d)
{
	char *name;

	if (!scan_quoted(s, 1, NAME_MOST, &name, d))
		return false;
	r->fence = details_add_fence(&r->plot->details, name);
	return scan_end(s, d);
}

static bool read_name(struct later_reader *r, struct scan *s, struct diag *d)
{
	struct place at;
	char *text;

	if (!read_cell(&r->plot->ground, s, &at, d) || !scan_quoted(s, 1, NAME_MOST, &text, d))
		return false;
	names_add(&r->plot->details.names, at, text);
	return scan_end(s, d);
}

static bool read_rate(struct later_reader *r, struct scan *s, struct diag *d)
{
	return read_attribute(&r->plot->details.rates, s, plot_units(r->plot), d);
}

static bool read_extra(struct later_reader *r, struct scan *s, struct diag *d)
{
	struct value value;
	char *name;

	if (!scan_quoted(s, 1, NAME_MOST, &name, d))
		return false;
	if (!value_scan(s, &extra_rule, plot_units(r->plot), &value, d)) {
		free(name);
		return false;
	}
	details_add_extra(&r->plot->details, name, value.as.amount);
	return scan_end(s, d);
}

/* In the order in which they are written. */
static const struct {
	const char *keyword;
	bool (*read)(struct later_reader *r, struct scan *s, struct diag *d);
} lines[] = {
	{ "fence", read_fence }, { "service", read_service }, { "plant", read_plant },
	{ "levels", read_levels }, { "finish", read_finish }, { "fall", read_fall },
	{ "house", read_house }, { "shade", read_shade }, { "name", read_name },
	{ "tie", read_tie }, { "keep", read_keep }, { "drop", read_drop }, { "tap", read_tap },
	{ "rate", read_rate }, { "extra", read_extra },
};
enum { LINES = sizeof lines / sizeof *lines };

/* What the block that is open lacks; false where it lacks nothing. */
static bool is_lacking(const struct later_reader *r, struct text *what)
{
	if (r->obstacle && !r->is_placed)
		text_print(what, "%s, indented", obstacle_line_words(r->obstacle));
	if (r->levels && r->rows_read < r->levels->rows)
		text_print(what, "row %d of %d of the levels, indented", r->rows_read + 1,
			r->levels->rows);
	return what->length > 0;
}

/* Ends what is open, a fence whose legs are all there or not. */
static bool close(struct later_reader *r, bool is_whole, struct diag *d)
{
	const struct fence *fence = r->fence;

	r->fence = NULL;
	r->service = NULL;
	r->plant = NULL;
	r->obstacle = NULL;
	r->levels = NULL;
	return !fence || fence_reader_end(&r->fence_reader, fence, is_whole, d);
}

bool later_reader_line(struct later_reader *r, struct scan *s, struct diag *d)
{
	struct text words = TEXT_EMPTY;
	bool is_good = !is_lacking(r, &words);
	const char *word;
	size_t length;

	if (!is_good)
		scan_fail(s, 0, d, "%s", words.bytes);
	text_fini(&words);
	if (!is_good || !close(r, true, d))
		return false;
	word = scan_word(s, &length);
	for (int i = 0; i < LINES; i++)
		if (scan_word_is(word, length, lines[i].keyword))
			return lines[i].read(r, s, d);
	for (int i = 0; i < LINES; i++)
		text_print(&words, "%s, ", lines[i].keyword);
	text_cut(&words, words.length - 2);
	scan_fail(s, 0, d, "%s or the end of the file", words.bytes);
	text_fini(&words);
	return false;
}

bool later_reader_end(struct later_reader *r, int line, struct diag *d)
{
	struct text words = TEXT_EMPTY;
	bool is_good = !is_lacking(r, &words);

	if (!is_good)
		diag_set_words(d, line, 1, "the end of the file", "%s", words.bytes);
	text_fini(&words);
	return is_good && close(r, true, d);
}

void later_reader_break_off(struct later_reader *r, struct diag *d)
{
	close(r, false, d);
}

/* ---- Those that are -------------------------------------------------------------------------- */

static bool read_fence_line(struct later_reader *r, struct scan *s, struct diag *d)
{
	struct scan ahead = *s;
	size_t length;
	const char *word = scan_word(&ahead, &length);

	if (scan_word_is(word, length, "run"))
		return fence_reader_run(&r->fence_reader, &ahead, r->fence, d);
	if (scan_word_is(word, length, "gate"))
		return fence_reader_gate(&r->fence_reader, &ahead, r->fence, d);
	return read_block_line(&r->fence->block, s, plot_units(r->plot), d);
}

bool later_reader_indented(struct later_reader *r, struct scan *s, struct diag *d)
{
	if (r->fence)
		return read_fence_line(r, s, d);
	if (r->service)
		return read_service_line(r, s, d);
	if (r->plant)
		return read_plant_line(r, s, d);
	if (r->obstacle)
		return read_obstacle_line(r, s, d);
	if (r->levels)
		return read_drops(r, s, d);
	return fail_indented(s, d);
}
