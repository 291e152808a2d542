#include "report/request.h"
#include "base/complain.h"

#include <getopt.h>
#include <string.h>

/* An option that takes a word, by its name; NULL where it is none of these. */
static const char *option_name(int option)
{
	switch (option) {
	case 'p':
		return "--prices";
	case 'n':
		return "--only";
	case 'd':
		return "--on";
	default:
		return drawing_option_name(option);
	}
}

/* What comes after it. */
static const char *option_needs(int option)
{
	switch (option) {
	case 'n':
		return "part";
	case 'd':
		return "day, such as 2026-06-21,";
	default:
		return drawing_option_name(option) ? "word" : "file";
	}
}

/* What a command takes besides -o and --prices. */
static const char *other_options(const struct accepted *accepted)
{
	if (accepted->drawing)
		return ", --force, --paper, --turn, --scale, --sheet, --with and --plain";
	if (accepted->days)
		return ", --force, --on YYYY-MM-DD and --json";
	if (accepted->csv)
		return ", --force, --only PARTS, --pages, --json and --csv";
	return accepted->json ? ", --force and --json" : " and --force";
}

/* Says what is wrong about the option that getopt_long has just met; it says nothing itself, since
 * it would print what it was given as it is. */
static bool refuse_option(const struct accepted *accepted, int option, char **argv)
{
	/* The last word may be what follows the option. */
	const char *name = option_name(option);
	const char *word = name ? name : argv[optind - 1];

	if (option == ':')
		complain("%s needs a %s after it", word, option_needs(optopt));
	else if (strncmp(word, "--", 2) == 0)
		complain("%s is not understood", word);
	else
		complain("option -%c is not understood", optopt);
	complain("%s takes -o OUT%s%s", argv[0], accepted->prices ? ", --prices BOOK" : "",
		other_options(accepted));
	return false;
}

static bool plots_read(struct request *request, int argc, char **argv, int plots)
{
	const char *const *files = request->plots;

	if (argc - optind != plots) {
		complain(plots == 1 ? "%s needs one plot file, or - for standard input" :
			"%s needs two plot files, of which one may be - for standard input",
			argv[0]);
		return false;
	}
	for (int i = 0; i < plots; i++)
		request->plots[i] = argv[optind + i];
	if (plots == 1 || strcmp(files[0], "-") != 0 || strcmp(files[1], "-") != 0)
		return true;
	complain("standard input holds one plot, not two");
	return false;
}

/* As asked for; else by the name of the file that is written. */
static bool kind_read(struct request *request, const struct accepted *accepted, bool json, bool csv)
{
	enum report_kind named = request->output ? report_kind_of(request->output) : REPORT_TEXT;

	if (json && csv) {
		complain("takeoff prints --json or --csv, not both");
		return false;
	}
	if (json || (!csv && named == REPORT_JSON && accepted->json))
		request->kind = REPORT_JSON;
	else if (csv || (named == REPORT_CSV && accepted->csv))
		request->kind = REPORT_CSV;
	return true;
}

/* Parts and pages are those of the text. */
static bool text_if_parts(const struct request *request, bool asks)
{
	if (!asks || request->kind == REPORT_TEXT)
		return true;
	complain("--only and --pages are for the takeoff as text: not with --json, --csv or a name "
		"that ends so");
	return false;
}

/* "shopping,walls", or "list". */
static bool only_read(struct request *request, const char *words)
{
	const char *unknown;
	size_t length;

	request->is_list = strcmp(words, "list") == 0;
	if (request->is_list || parts_read(words, &request->parts, &unknown, &length))
		return true;
	complain("--only: there is no part \"%.*s\"; --only list names them", (int)length,
		unknown);
	return false;
}

/* "2026-06-21". */
static bool day_read(struct request *request, const char *words)
{
	struct date day;

	if (!date_read(words, &day)) {
		complain("--on needs a day from %d to %d, such as 2026-06-21, not %s", YEAR_LEAST,
			YEAR_MOST, words);
		return false;
	}
	if (request->day_count == SUN_DAYS_MOST) {
		complain("--on takes %d days at the most", SUN_DAYS_MOST);
		return false;
	}
	request->days[request->day_count++] = day;
	return true;
}

/* What is looked at once all options are read. */
struct asked_for {
	const char *only;
	bool json, csv, pages;
	bool is_refused; /* what an option says was not understood; it has complained */
};

/* Takes an option; false where the command has none such. */
static bool option_take(struct request *request, struct asked_for *asked,
	const struct accepted *accepted, int option)
{
	if (option == 'o')
		request->output = optarg;
	else if (option == 'p' && accepted->prices)
		request->prices = optarg;
	else if (option == 'j' && accepted->json)
		asked->json = true;
	else if (option == 'c' && accepted->csv)
		asked->csv = true;
	else if (option == 'n' && accepted->only)
		asked->only = optarg;
	else if (option == 'g' && accepted->only)
		asked->pages = true;
	else if (option == 'd' && accepted->days)
		asked->is_refused |= !day_read(request, optarg);
	else if (option == 'f')
		request->force = true;
	else if (drawing_option_name(option) && accepted->drawing)
		asked->is_refused |= !drawing_option_read(&request->drawing,
			(enum drawing_option)option, optarg);
	else
		return false;
	return true;
}

bool request_read(struct request *request, int argc, char **argv,
	const struct accepted *accepted)
{
	static const struct option options[] = {
		{ "output", required_argument, NULL, 'o' },
		{ "prices", required_argument, NULL, 'p' },
		{ "json", no_argument, NULL, 'j' },
		{ "csv", no_argument, NULL, 'c' },
		{ "force", no_argument, NULL, 'f' },
		{ "only", required_argument, NULL, 'n' },
		{ "pages", no_argument, NULL, 'g' },
		{ "on", required_argument, NULL, 'd' },
		{ "paper", required_argument, NULL, OPTION_PAPER },
		{ "turn", required_argument, NULL, OPTION_TURN },
		{ "scale", required_argument, NULL, OPTION_SCALE },
		{ "sheet", required_argument, NULL, OPTION_SHEET },
		{ "with", required_argument, NULL, OPTION_WITH },
		{ "plain", no_argument, NULL, OPTION_PLAIN },
		{ NULL, 0, NULL, 0 },
	};
	struct asked_for asked = { .only = NULL };
	int option;

	*request = (struct request){ .kind = REPORT_TEXT, .parts = PARTS_ALL,
		.drawing = SVG_AS_FITS };
	opterr = 0;
	optind = 0; /* the command takes the place of the program's name */
	while ((option = getopt_long(argc, argv, ":o:", options, NULL)) != -1)
		if (!option_take(request, &asked, accepted, option))
			return refuse_option(accepted, option, argv);
	if (asked.is_refused || (asked.only && !only_read(request, asked.only)))
		return false;
	request->parts |= asked.pages ? PARTS_PAGED : 0;
	return request->is_list || (plots_read(request, argc, argv, accepted->plots) &&
		kind_read(request, accepted, asked.json, asked.csv) &&
		text_if_parts(request, asked.only || asked.pages));
}
