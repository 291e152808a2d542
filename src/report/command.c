#include "report/command.h"
#include "base/complain.h"
#include "base/temporary.h"
#include "plot/history/store.h"
#include "report/deliver.h"
#include "prices/prices.h"
#include "report/kind.h"
#include "report/text/print.h"

#include <errno.h>
#include <getopt.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

struct request {
	const char *plot, *output; /* output NULL: standard output */
	const char *prices;        /* NULL: the book that the plot names, if any */
	enum report_kind kind;
	bool is_plan, json, csv, force;
};

/* Says what is wrong about the option that getopt_long has just met; it says nothing itself, since
 * it would print what it was given as it is. */
static bool refuse_option(const struct request *request, int option, char **argv)
{
	const char *word = argv[optind - 1];

	if (option == ':')
		complain("%s needs a file after it", word);
	else if (strncmp(word, "--", 2) == 0)
		complain("%s is not understood", word);
	else
		complain("option -%c is not understood", optopt);
	complain("%s takes -o OUT, --prices BOOK%s", argv[0], request->is_plan ? " and --force" :
		", --force, --json and --csv");
	return false;
}

/* As asked for; else by the name of the file that is written. */
static bool request_kind(struct request *request)
{
	if (request->json && request->csv) {
		complain("takeoff prints --json or --csv, not both");
		return false;
	}
	request->kind = request->output ? report_kind_of(request->output) : REPORT_TEXT;
	if (request->json)
		request->kind = REPORT_JSON;
	if (request->csv)
		request->kind = REPORT_CSV;
	return true;
}

static bool request_read(struct request *request, int argc, char **argv)
{
	static const struct option options[] = {
		{ "output", required_argument, NULL, 'o' },
		{ "prices", required_argument, NULL, 'p' },
		{ "json", no_argument, NULL, 'j' },
		{ "csv", no_argument, NULL, 'c' },
		{ "force", no_argument, NULL, 'f' },
		{ NULL, 0, NULL, 0 },
	};
	int option;

	*request = (struct request){ .is_plan = strcmp(argv[0], "plan") == 0 };
	opterr = 0;
	optind = 0; /* the command's word takes the place of the program's name */
	while ((option = getopt_long(argc, argv, ":o:", options, NULL)) != -1) {
		if (option == 'o')
			request->output = optarg;
		else if (option == 'p')
			request->prices = optarg;
		else if (option == 'j' && !request->is_plan)
			request->json = true;
		else if (option == 'c' && !request->is_plan)
			request->csv = true;
		else if (option == 'f')
			request->force = true;
		else
			return refuse_option(request, option, argv);
	}
	if (argc - optind != 1) {
		complain("%s needs one plot file, or - for standard input", argv[0]);
		return false;
	}
	request->plot = argv[optind];
	return request_kind(request);
}

/* The name for the heading: the path's last part. */
static const char *plot_name(const char *path)
{
	const char *slash = strrchr(path, '/');

	if (strcmp(path, "-") == 0)
		return "standard input";
	return slash ? slash + 1 : path;
}

/* A takeoff to be printed, as file_content takes it. */
struct asked {
	const struct request *request;
	const struct plot *plot;
	const struct takeoff *takeoff;
	const char *book; /* the path of the price book; NULL: none */
};

static void print_asked(struct sink *out, const void *context)
{
	const struct asked *asked = context;
	const char *name = plot_name(asked->request->plot);

	if (asked->request->is_plan)
		report_plan(out, asked->plot, asked->takeoff, name);
	else
		report_print(asked->request->kind, out, asked->plot, asked->takeoff, name);
}

static int print(const struct asked *asked)
{
	struct stream_sink out = stream_sink(stdout);

	print_asked(&out.sink, asked);
	if (!out.failed && fflush(stdout) == 0)
		return 0;
	return complain("cannot write to standard output: %s", strerror(errno));
}

/* Memory has run out. */
static void give_up(void)
{
	temporary_abandon();
	fputs("parterre: out of memory\n", stderr);
}

static int deliver(const struct asked *asked)
{
	const struct request *request = asked->request;
	const struct file_content content = { print_asked, asked };
	const struct delivery_from from = { request->plot, asked->book };
	struct file_error error;

	if (!request->output || strcmp(request->output, "-") == 0)
		return print(asked);
	temporary_guard();
	memory_on_exhaustion(give_up);
	switch (report_deliver(request->output, &content, &from, request->force, &error)) {
	case DELIVERY_DONE:
		return 0;
	case DELIVERY_WOULD_REPLACE:
		complain("%s", error.sentence);
		return complain("--force writes over it");
	case DELIVERY_FAILED:
		break;
	}
	return complain("%s", error.sentence);
}

/* book NULL: without prices. */
static int takeoff(const struct request *request, const struct plot *plot,
	const struct book *book, const char *book_path)
{
	struct arena arena = ARENA_EMPTY;
	struct takeoff result;
	int status;

	takeoff_compute(&result, &arena, plot, book);
	status = deliver(&(struct asked){ request, plot, &result, book_path });
	arena_clear(&arena);
	return status;
}

/* With the book given, else the one that the plot names, else none. */
static int priced(const struct request *request, const struct plot *plot)
{
	char *path = request->prices ? memory_string(request->prices) :
		prices_path(plot, request->plot);
	struct text message = TEXT_EMPTY;
	struct book book;
	int status;

	if (!path)
		return takeoff(request, plot, NULL, NULL);
	if (prices_read(path, &book, &message))
		status = takeoff(request, plot, &book, path);
	else
		status = complain("%s", message.bytes);
	book_fini(&book);
	text_fini(&message);
	free(path);
	return status;
}

int command_report(int argc, char **argv)
{
	struct text message = TEXT_EMPTY;
	struct request request;
	struct plot plot;
	int status;

	if (!request_read(&request, argc, argv))
		return 2;
	plot_init(&plot);
	if (store_read(request.plot, &plot, &message))
		status = priced(&request, &plot);
	else
		status = complain("%s", message.bytes);
	plot_fini(&plot);
	text_fini(&message);
	return status;
}
