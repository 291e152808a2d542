#include "report/counted.h"
#include "base/complain.h"
#include "plot/history/store.h"
#include "prices/prices.h"
#include "takeoff/sun/plant_sun.h"

#include <stdlib.h>
#include <string.h>

static bool priced(struct counted *out, struct text *message)
{
	return !out->book_path || prices_read(out->book_path, &out->book, message);
}

typedef bool takeoff_by(struct takeoff *out, struct arena *arena, const struct plot *plot,
	const struct book *book);

static bool read_by(takeoff_by *count, struct counted *out, const char *path, const char *prices)
{
	struct text message = TEXT_EMPTY;
	bool is_read;

	*out = (struct counted){ .arena = ARENA_EMPTY };
	plot_init(&out->plot);
	is_read = store_read(path, &out->plot, &message);
	if (is_read) {
		out->book_path = prices ? memory_string(prices) : prices_path(&out->plot, path);
		is_read = priced(out, &message);
	}
	if (is_read)
		count(&out->takeoff, &out->arena, &out->plot, out->book_path ? &out->book : NULL);
	if (!is_read)
		complain("%s", message.bytes);
	text_fini(&message);
	return is_read;
}

bool counted_read(struct counted *out, const char *path, const char *prices)
{
	return read_by(takeoff_with_sun, out, path, prices);
}

bool counted_read_for_sun(struct counted *out, const char *path, const char *prices)
{
	return read_by(takeoff_compute, out, path, prices);
}

void counted_fini(struct counted *counted)
{
	arena_clear(&counted->arena);
	book_fini(&counted->book);
	free(counted->book_path);
	plot_fini(&counted->plot);
}

const char *counted_name(const char *path)
{
	const char *slash = strrchr(path, '/');

	if (strcmp(path, "-") == 0)
		return "standard input";
	return slash ? slash + 1 : path;
}
