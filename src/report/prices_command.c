#include "report/command.h"
#include "base/complain.h"
#include "plot/history/store.h"
#include "report/new_book.h"
#include "report/output.h"

#include <string.h>

static void print_text(struct sink *out, const void *context)
{
	const struct text *text = context;

	sink_add_bytes(out, text->bytes, text->length);
}

/* Prices may have been filled in: no file is written over unasked, whatever it holds. */
static bool may_write(const struct request *request)
{
	const char *path = request->output;

	if (!path || strcmp(path, "-") == 0 || request->force || !file_stamp(path).exists)
		return true;
	complain("%s is there already: nothing written", path);
	complain("--force writes over it");
	return false;
}

/* Of the plot alone: the book that it names, if any, need not be there. */
static bool book_of_plot(struct text *book, const char *path)
{
	struct text message = TEXT_EMPTY;
	struct arena arena = ARENA_EMPTY;
	struct takeoff takeoff;
	struct plot plot;
	bool is_made;

	plot_init(&plot);
	is_made = store_read(path, &plot, &message) &&
		takeoff_compute(&takeoff, &arena, &plot, NULL) &&
		new_book(book, &takeoff, NULL, &message);
	if (!is_made)
		complain("%s", message.bytes);
	arena_clear(&arena);
	plot_fini(&plot);
	text_fini(&message);
	return is_made;
}

static int print_new(struct request *request)
{
	struct text book = TEXT_EMPTY;
	int status = 2;

	if (may_write(request) && book_of_plot(&book, request->plots[0])) {
		request->force = true; /* it was asked for, or nothing is there */
		status = output_print(request, &(struct file_content){ print_text, &book },
			&(struct delivery_from){ request->plots[0], NULL, NULL });
	}
	text_fini(&book);
	return status;
}

int command_prices(int argc, char **argv)
{
	static const struct accepted accepted = { .plots = 1 };
	static char name[] = "prices new";
	struct request request;

	if (argc < 2 || strcmp(argv[1], "new") != 0)
		return complain("prices new FILE prints a price book to fill in for a plot");
	argv[1] = name;
	return request_read(&request, argc - 1, argv + 1, &accepted) ? print_new(&request) : 2;
}
