#include "report/deliver.h"
#include "report/words/first_line.h"

#include <stdio.h>
#include <string.h>

enum { LOOK_BYTES = 256 };

/* Whether the file at path may not be replaced: it neither is empty nor begins like a takeoff,
 * or it cannot be read. */
static bool holds_something_else(const char *path)
{
	char head[LOOK_BYTES];
	FILE *file = fopen(path, "re");
	size_t length;

	if (!file)
		return true;
	length = fread(head, 1, sizeof head, file);
	fclose(file);
	return length > 0 && !report_is_takeoff(head, length);
}

/* By whatever name. */
static bool is_source(const char *path, const char *source)
{
	return source && file_is_same(path, strcmp(source, "-") == 0 ? "/dev/stdin" : source);
}

enum delivery report_deliver(const char *path, const struct file_content *content,
	const struct delivery_from *from, bool force, struct file_error *error)
{
	struct file_stamp there = file_stamp(path);

	for (const struct delivery_from *of = from; of; of = of->other) {
		bool is_plot = is_source(path, of->plot);

		if (!is_plot && !is_source(path, of->book))
			continue;
		snprintf(error->sentence, sizeof error->sentence, "%.150s is the %s: nothing "
			"written", path, is_plot ? "plot itself" : "price book that it reads");
		return DELIVERY_FAILED;
	}
	if (there.exists && there.is_regular && !force && holds_something_else(path)) {
		snprintf(error->sentence, sizeof error->sentence,
			"%.150s holds something that is no takeoff: nothing written", path);
		return DELIVERY_WOULD_REPLACE;
	}
	return file_print(path, content, error) ? DELIVERY_DONE : DELIVERY_FAILED;
}
