#include "support/plots.h"
#include "base/memory.h"
#include "plot/edit/levels_move.h"
#include "plot/format/format.h"

#include <assert.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static enum plot_class class_of(char letter)
{
	if (letter >= 'A' && letter <= 'Z')
		return CLASS_FIXTURE;
	if (letter <= 'h')
		return CLASS_BED;
	return letter >= 'l' && letter <= 'n' ? CLASS_LAWN : CLASS_PATH;
}

static struct block *block_of(struct plot *plot, char letter, enum attribute attribute)
{
	for (size_t i = 0; i < plot->details.legend_count; i++)
		if (plot->details.legend[i].letter == letter)
			return &plot->details.legend[i].block;
	assert(!letter);
	return attribute_block(attribute) == BLOCK_HEAD ? &plot->details.head :
		&plot->details.allow;
}

void plot_set(struct plot *plot, char letter, enum attribute attribute, const char *value)
{
	struct scan s = scan_start(value, strlen(value), 1);
	struct value read;
	struct diag d;
	bool done = value_scan(&s, &attribute_row(attribute)->rule, UNITS_IMPERIAL, &read, &d);

	assert(done && scan_is_done(&s));
	(void)done;
	block_set(block_of(plot, letter, attribute), attribute, read);
	if (attribute == HEAD_CELL)
		levels_cover(&plot->details.levels, &plot->ground, plot_cell(plot));
}

static void start(struct plot *plot, int columns, int rows)
{
	plot_init(plot);
	plot_set(plot, 0, HEAD_UNITS, "imperial");
	plot_set(plot, 0, HEAD_CELL, "1 ft");
	ground_init(&plot->ground, columns, rows);
}

static void add_letter(struct plot *plot, char letter)
{
	if (letter != OPEN_GROUND && !plot_entry(plot, letter))
		details_add_entry(&plot->details, class_of(letter), letter,
			memory_bytes(&letter, 1));
}

void plot_from_text(struct plot *plot, const char *text)
{
	struct diag d;

	plot_init(plot);
	if (format_read(text, strlen(text), plot, &d))
		return;
	fprintf(stderr, "%d:%d: found %s, expected %s\n", d.line, d.column, d.found, d.expected);
	abort();
}

void plot_add_lines(struct plot *plot, const char *lines)
{
	struct text text = TEXT_EMPTY;

	format_write(plot, &text);
	text_add(&text, lines);
	plot_fini(plot);
	plot_from_text(plot, text.bytes);
	text_fini(&text);
}

void plot_from_rows(struct plot *plot, const char *const *rows)
{
	size_t columns = strlen(rows[0]);
	int count = 0;

	while (rows[count])
		count++;
	start(plot, (int)columns, count);
	for (int y = 0; y < count; y++) {
		assert(strlen(rows[y]) == columns);
		memcpy(plot->ground.cells + (size_t)y * columns, rows[y], columns);
		for (size_t x = 0; x < columns; x++)
			add_letter(plot, rows[y][x]);
	}
}

static void lay_at_random(struct ground *ground, struct random *random, char letter, int side)
{
	int left = random_below(random, ground->columns), top = random_below(random, ground->rows);
	int right = left + random_below(random, side), bottom = top + random_below(random, side);

	for (int y = top; y <= bottom && y < ground->rows; y++)
		for (int x = left; x <= right && x < ground->columns; x++)
			ground->cells[y * ground->columns + x] = letter;
}

void plot_at_random(struct plot *plot, struct random *random, int most, const char *letters)
{
	int kinds = (int)strlen(letters), side = random_between(random, 1, most);
	int strokes;

	start(plot, random_between(random, 1, most), random_between(random, 1, most));
	for (int i = 0; i < kinds; i++)
		add_letter(plot, letters[i]);
	strokes = plot->ground.columns * plot->ground.rows / (side * side) * 3 + 3;
	for (int i = 0; i < strokes; i++)
		lay_at_random(&plot->ground, random, letters[random_below(random, kinds)], side);
}
