#include "plot/format/format.h"
#include "plot/format/lines.h"
#include "plot/format/read_block.h"
#include "plot/format/read_later.h"

enum stage { STAGE_HEAD, STAGE_LEGEND, STAGE_GROUND, STAGE_LATER };

struct reader {
	struct lines lines;
	struct plot *plot;
	struct diag *d;
	enum stage stage;
	struct block *block; /* whose indented lines may follow; NULL: none */
	bool allow_seen;
	bool has_rows;       /* false: none follow the ground's size */
	int rows_read;
	struct scan axis;    /* where it was read, for its range needs the ground's size */
	struct later_reader later;
};

/* True once units and cell are there; else fails at column 1 of the line. */
static bool required_are_set(const struct reader *r, int line, const char *found)
{
	for (enum attribute a = block_first(BLOCK_HEAD); a <= block_last(BLOCK_HEAD); a++) {
		const struct attribute_row *row = attribute_row(a);

		if (row->required && !block_value(&r->plot->details.head, a)->set)
			return diag_set_words(r->d, line, 1, found,
				"%s in the head, before the legend and the ground", row->keyword);
	}
	return true;
}

static enum units units_so_far(const struct reader *r)
{
	const struct value *units = block_value(&r->plot->details.head, HEAD_UNITS);

	return units->set && units->as.number == UNITS_METRIC ? UNITS_METRIC : UNITS_IMPERIAL;
}

static bool read_allow(struct reader *r, struct scan *s)
{
	if (r->allow_seen)
		return scan_fail(s, 0, r->d, "each keyword once");
	r->allow_seen = true;
	r->block = &r->plot->details.allow;
	return scan_end(s, r->d);
}

static bool read_entry(struct reader *r, struct scan *s, enum plot_class class)
{
	size_t start, length;
	const char *word;
	char *name, letter;

	if (!required_are_set(r, s->line, class_word(class)))
		return false;
	start = s->at;
	word = scan_word(s, &length);
	if (length != 1 || !class_takes_letter(class, word[0]))
		return scan_fail(s, start, r->d, "a %s letter",
			class == CLASS_FIXTURE ? "capital" : "lower-case");
	letter = word[0];
	if (plot_entry(r->plot, letter))
		return scan_fail(s, start, r->d, "another letter: %c is in the legend already",
			letter);
	if (!scan_quoted(s, 1, NAME_MOST, &name, r->d))
		return false;
	r->block = &details_add_entry(&r->plot->details, class, letter, name)->block;
	r->stage = STAGE_LEGEND;
	return scan_end(s, r->d);
}

static bool read_side(struct reader *r, struct scan *s, int *side)
{
	size_t start = s->at;
	int64_t number;

	scan_blanks(s);
	if (!scan_decimal(s, 0, &number) || number < 1 || number > SIDE_MOST)
		return scan_fail(s, start, r->d, "a number of cells from 1 to %d", SIDE_MOST);
	*side = (int)number;
	return true;
}

static bool axis_in_range(const struct reader *r)
{
	const struct value *axis = block_value(&r->plot->details.head, HEAD_AXIS);
	int across = 2 * r->plot->ground.columns - 1, down = 2 * r->plot->ground.rows - 1;

	if (!axis->set || (axis->as.place.x >= 1 && axis->as.place.x <= across &&
		axis->as.place.y >= 1 && axis->as.place.y <= down))
		return true;
	return diag_set(r->d, r->axis.line, (int)r->axis.at + 1, r->axis.text + r->axis.at,
		r->axis.length - r->axis.at, "half cells from 1,1 to %d,%d", across, down);
}

static bool read_ground(struct reader *r, struct scan *s)
{
	size_t start;
	int columns = 0, rows = 0;

	if (!required_are_set(r, s->line, "ground") || !read_side(r, s, &columns))
		return false;
	start = s->at;
	if (!scan_take(s, 'x'))
		return scan_fail(s, start, r->d, "x, as in ground 14 x 8");
	if (!read_side(r, s, &rows) || !scan_end(s, r->d))
		return false;
	ground_init(&r->plot->ground, columns, rows);
	r->rows_read = r->has_rows ? 0 : rows;
	r->stage = STAGE_GROUND;
	return axis_in_range(r);
}

static bool read_row(struct reader *r, struct scan *s)
{
	struct ground *ground = &r->plot->ground;
	char *cells = ground_at(ground, 0, r->rows_read);

	if (scan_is_done(s) || s->at == 0)
		return scan_fail(s, 0, r->d, "row %d of %d of the ground, indented",
			r->rows_read + 1, ground->rows);
	for (int x = 0; x < ground->columns; x++, s->at++) {
		char c = scan_peek(s);

		if (s->at == s->length)
			return scan_fail_here(s, r->d, "%d letters in the row, not %d",
				ground->columns, x);
		if (c != OPEN_GROUND && !plot_entry(r->plot, c))
			return scan_fail_here(s, r->d, "a letter of the legend or .");
		cells[x] = c;
	}
	if (s->at != s->length)
		return scan_fail(s, s->at, r->d, "the end of the row after %d letters",
			ground->columns);
	r->rows_read++;
	return true;
}

/* ---- Lines ----------------------------------------------------------------------------------- */

static bool read_top_line(struct reader *r, struct scan *s)
{
	size_t length;
	const char *word;

	r->block = NULL;
	if (r->stage >= STAGE_GROUND) {
		r->stage = STAGE_LATER;
		return later_reader_line(&r->later, s, r->d);
	}
	word = scan_word(s, &length);
	for (enum plot_class class = CLASS_BED; class <= CLASS_FIXTURE; class++)
		if (scan_word_is(word, length, class_word(class)))
			return read_entry(r, s, class);
	if (scan_word_is(word, length, "ground"))
		return read_ground(r, s);
	if (r->stage != STAGE_HEAD)
		return scan_fail(s, 0, r->d,
			"bed, path, lawn, fixture or ground; the head ends where the legend "
			"begins");
	if (scan_word_is(word, length, "allow"))
		return read_allow(r, s);
	if (scan_word_is(word, length, attribute_row(HEAD_AXIS)->keyword)) {
		scan_blanks(s);
		r->axis = *s;
	}
	s->at = 0;
	return read_block_line(&r->plot->details.head, s, units_so_far(r), r->d);
}

static bool read_line(struct reader *r, struct scan *s)
{
	if (r->stage == STAGE_GROUND && r->rows_read < r->plot->ground.rows)
		return read_row(r, s);
	if (s->length == 0)
		return true;
	if (!char_is_blank(s->text[0]))
		return read_top_line(r, s);
	if (r->stage == STAGE_GROUND)
		return scan_fail(s, 0, r->d, "the end of the ground: its %d rows are there",
			r->plot->ground.rows);
	if (r->stage == STAGE_LATER)
		return later_reader_indented(&r->later, s, r->d);
	if (!r->block)
		return fail_indented(s, r->d);
	return read_block_line(r->block, s, units_so_far(r), r->d);
}

static bool read_first_line(struct reader *r)
{
	struct scan s;
	size_t length;
	const char *word;

	switch (lines_next(&r->lines, FORMAT_LINE_MOST, &s, r->d)) {
	case LINE_BAD:
		return false;
	case LINE_END:
		return diag_set_words(r->d, 1, 1, "an empty file", "parterre-plot 1");
	case LINE_READ:
		break;
	}
	word = scan_word(&s, &length);
	if (s.length == 0 || word != s.text || !scan_word_is(word, length, "parterre-plot"))
		return scan_fail(&s, 0, r->d, "parterre-plot 1, the first line of a plot");
	word = scan_word(&s, &length);
	if (!scan_word_is(word, length, "1"))
		return diag_set(r->d, 1, (int)(word - s.text) + 1, word, length,
			"version 1, the only version of parterre-plot this program reads");
	return scan_end(&s, r->d);
}

static bool read_end(struct reader *r)
{
	static const char found[] = "the end of the file";
	int line = r->lines.number + 1;

	if (!required_are_set(r, line, found))
		return false;
	if (r->stage < STAGE_GROUND)
		return diag_set_words(r->d, line, 1, found, "ground W x H and its rows");
	if (r->rows_read < r->plot->ground.rows)
		return diag_set_words(r->d, line, 1, found,
			"row %d of %d of the ground", r->rows_read + 1, r->plot->ground.rows);
	return later_reader_end(&r->later, line, r->d);
}

static bool read_all(struct reader *r)
{
	struct scan s;

	if (!read_first_line(r))
		return false;
	for (;;) {
		switch (lines_next(&r->lines, FORMAT_LINE_MOST, &s, r->d)) {
		case LINE_BAD:
			return false;
		case LINE_END:
			return read_end(r);
		case LINE_READ:
			if (!read_line(r, &s))
				return false;
			break;
		}
	}
}

static bool read_plot(struct reader *r)
{
	bool is_read;

	if (r->lines.length > FORMAT_BYTES_MOST)
		return diag_set_words(r->d, 0, 0, "a larger file", "a plot of at most 16 MiB");
	is_read = read_all(r);
	if (!is_read) {
		later_reader_break_off(&r->later, r->d);
		plot_fini(r->plot);
	}
	later_reader_fini(&r->later);
	return is_read;
}

bool format_read(const char *bytes, size_t length, struct plot *plot, struct diag *d)
{
	return read_plot(&(struct reader){ .lines = { bytes, length, 0, 0 }, .plot = plot, .d = d,
		.has_rows = true, .later = later_reader_of(plot) });
}

bool format_read_details(const char *bytes, size_t length, struct plot *plot, struct diag *d)
{
	return read_plot(&(struct reader){ .lines = { bytes, length, 0, 0 }, .plot = plot, .d = d,
		.later = later_reader_of(plot) });
}
