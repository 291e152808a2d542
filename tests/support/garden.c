#include "support/garden.h"
#include "base/file.h"
#include "plot/format/format.h"
#include "prices/prices.h"
#include "takeoff/compute.h"

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
	takeoff_compute(&garden->takeoff, &garden->arena, &garden->plot,
		garden->has_book ? &garden->book : NULL);
}

void garden_fini(struct garden *garden)
{
	arena_clear(&garden->arena);
	plot_fini(&garden->plot);
	if (garden->has_book)
		book_fini(&garden->book);
	garden->has_book = false;
}

const struct snag *garden_snag(const struct garden *garden, enum snag_code code, int index)
{
	for (int i = 0; i < garden->takeoff.snag_count; i++)
		if (garden->takeoff.snags[i].code == code && index-- == 0)
			return &garden->takeoff.snags[i];
	return NULL;
}

const struct item *garden_item(const struct garden *garden, const char *id)
{
	for (int i = 0; i < garden->takeoff.item_count; i++)
		if (strcmp(garden->takeoff.items[i].id, id) == 0)
			return &garden->takeoff.items[i];
	return NULL;
}
