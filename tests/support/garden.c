#include "support/garden.h"
#include "base/file.h"
#include "plot/format/format.h"
#include "prices/prices.h"
#include "report/text/print.h"
#include "report/words/item_words.h"
#include "report/words/snag_words.h"
#include "takeoff/sun/plant_sun.h"

#include <assert.h>
#include <stdlib.h>
#include <string.h>

void garden_rows(struct garden *garden, const char *const *rows)
{
	*garden = (struct garden){ .arena = ARENA_EMPTY };
	plot_from_rows(&garden->plot, rows);
}

void garden_rectangle(struct garden *garden, char letter, int columns, int rows)
{
	const char **lines = memory_new((size_t)rows + 1, sizeof *lines);
	char *line = memory_new((size_t)columns + 1, 1);

	memset(line, letter, (size_t)columns);
	for (int i = 0; i < rows; i++)
		lines[i] = line;
	garden_rows(garden, lines);
	free(line);
	free(lines);
}

void garden_file(struct garden *garden, const char *path)
{
	struct text bytes = TEXT_EMPTY;
	struct file_error error;
	struct diag d;
	bool is_read;

	*garden = (struct garden){ .arena = ARENA_EMPTY };
	plot_init(&garden->plot);
	is_read = file_read(path, FORMAT_BYTES_MOST, &bytes, &error) &&
		format_read(bytes.bytes, bytes.length, &garden->plot, &d);
	assert(is_read);
	(void)is_read;
	text_fini(&bytes);
	char *book = prices_path(&garden->plot, path);

	if (book)
		garden_book(garden, book);
	free(book);
}

void garden_book(struct garden *garden, const char *path)
{
	struct text message = TEXT_EMPTY;

	if (garden->has_book)
		book_fini(&garden->book);
	garden->has_book = prices_read(path, &garden->book, &message);
	assert(garden->has_book);
	text_fini(&message);
}

void garden_count(struct garden *garden)
{
	arena_clear(&garden->arena);
	arena_clear(&garden->words);
	takeoff_with_sun(&garden->takeoff, &garden->arena, &garden->plot,
		garden->has_book ? &garden->book : NULL);
}

void garden_set_out(struct garden *garden, struct setout *out, struct arena *arena)
{
	garden_count(garden);
	setout_make(out, arena, &garden->takeoff.plot, &garden->takeoff.survey,
		&garden->takeoff.fences);
}

struct zones_ground garden_ground(struct garden *garden)
{
	const struct basis basis = { .arena = &garden->arena, .plot = &garden->takeoff.plot,
		.survey = &garden->takeoff.survey, .allow = garden->takeoff.allow };
	struct zones_ground ground;
	struct zones zones;

	zones_compute(&zones, &ground, &basis, &garden->takeoff.walls);
	return ground;
}

void garden_fini(struct garden *garden)
{
	arena_clear(&garden->arena);
	arena_clear(&garden->words);
	plot_fini(&garden->plot);
	if (garden->has_book)
		book_fini(&garden->book);
	garden->has_book = false;
}

const struct snag *garden_snag(const struct garden *garden, enum snag_code code, int index)
{
	for (int i = 0; i < (int)garden->takeoff.snags.count; i++)
		if (garden->takeoff.snags.list[i].code == code && index-- == 0)
			return &garden->takeoff.snags.list[i];
	return NULL;
}

const struct item *garden_item(const struct garden *garden, const char *id)
{
	const struct item *items = garden->takeoff.items.list;

	for (size_t i = 0; i < garden->takeoff.items.count; i++) {
		struct text own = TEXT_EMPTY;
		bool is_it;

		good_add_id(&own, items[i].good, items[i].name);
		is_it = strcmp(own.bytes, id) == 0;
		text_fini(&own);
		if (is_it)
			return &items[i];
	}
	return NULL;
}

void garden_print(struct garden *garden, struct text *paper, const char *file, unsigned parts)
{
	struct text_sink sink = text_sink(paper);

	report_text(&sink.sink, &garden->plot, &garden->takeoff, file, parts);
}

struct report garden_report(struct garden *garden, struct sink *out)
{
	return (struct report){ .out = out, .words = &garden->words, .plot = &garden->plot,
		.takeoff = &garden->takeoff, .units = plot_units(&garden->plot) };
}

const char *garden_id(struct garden *garden, const struct item *item)
{
	struct report report = garden_report(garden, NULL);

	return item_id(&report, item);
}

const char *garden_label(struct garden *garden, const struct item *item)
{
	struct report report = garden_report(garden, NULL);

	return item_label(&report, item);
}

const char *garden_sized(struct garden *garden, const struct item *item)
{
	struct report report = garden_report(garden, NULL);

	return untied(&report, item_sized_label(&report, item));
}

const char *garden_note(struct garden *garden, const struct item *item)
{
	struct report report = garden_report(garden, NULL);

	return item_note(&report, item);
}

const char *garden_sentence(struct garden *garden, const struct snag *snag)
{
	struct report report = garden_report(garden, NULL);

	return snag_sentence(&report, snag);
}
