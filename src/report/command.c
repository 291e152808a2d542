#include "report/command.h"
#include "base/complain.h"
#include "report/compare/compare.h"
#include "report/counted.h"
#include "report/json/json_snags.h"
#include "report/output.h"
#include "report/svg/svg.h"
#include "report/text/print.h"

/* ---- Takeoff, plan and set-out --------------------------------------------------------------- */

/* A takeoff to be printed, as file_content takes it. */
struct asked {
	const struct request *request;
	const struct counted *counted;
};

static void print_takeoff(struct sink *out, const void *context)
{
	const struct asked *asked = context;
	const struct counted *counted = asked->counted;

	report_print(asked->request->kind, asked->request->parts, out, &counted->plot,
		&counted->takeoff, counted_name(asked->request->plots[0]));
}

/* The words that --only takes. */
static void print_parts(struct sink *out, const void *context)
{
	(void)context;
	for (int part = 0; part < PARTS; part++)
		sink_print(out, "%-10s %s\n", part_word((enum part)part),
			part_tells((enum part)part));
}

static void print_plan_alone(struct sink *out, const void *context)
{
	const struct asked *asked = context;
	const struct counted *counted = asked->counted;

	report_plan(out, &counted->plot, &counted->takeoff,
		counted_name(asked->request->plots[0]));
}

static void print_setout_alone(struct sink *out, const void *context)
{
	const struct asked *asked = context;
	const struct counted *counted = asked->counted;

	report_setout(out, &counted->plot, &counted->takeoff,
		counted_name(asked->request->plots[0]));
}

/* Of one plot that is counted. */
static int print_counted(const struct request *request, const struct counted *counted,
	void (*print)(struct sink *out, const void *context))
{
	return output_print(request,
		&(struct file_content){ print, &(struct asked){ request, counted } },
		&(struct delivery_from){ request->plots[0], counted->book_path, NULL });
}

/* Of one plot, if it `is_good` (NULL: any is). */
static int print_one(const struct request *request,
	void (*print)(struct sink *out, const void *context),
	bool (*is_good)(const struct request *request, const struct counted *counted))
{
	struct counted counted;
	int status = 2;

	if (counted_read(&counted, request->plots[0], request->prices) &&
	    (!is_good || is_good(request, &counted)))
		status = print_counted(request, &counted, print);
	counted_fini(&counted);
	return status;
}

int command_takeoff(int argc, char **argv)
{
	static const struct accepted accepted = { .plots = 1, .prices = true, .json = true,
		.csv = true, .only = true };
	struct request request;

	if (!request_read(&request, argc, argv, &accepted))
		return 2;
	if (request.is_list)
		return output_print(&request, &(struct file_content){ print_parts, NULL },
			&(struct delivery_from){ NULL, NULL, NULL });
	return print_one(&request, print_takeoff, NULL);
}

static int command_sheet(int argc, char **argv,
	void (*print)(struct sink *out, const void *context))
{
	static const struct accepted accepted = { .plots = 1, .prices = true };
	struct request request;

	return request_read(&request, argc, argv, &accepted) ? print_one(&request, print, NULL) : 2;
}

int command_plan(int argc, char **argv)
{
	return command_sheet(argc, argv, print_plan_alone);
}

int command_setout(int argc, char **argv)
{
	return command_sheet(argc, argv, print_setout_alone);
}

/* ---- Drawing --------------------------------------------------------------------------------- */

static void print_drawing_sheet(struct sink *out, const void *context)
{
	const struct asked *asked = context;
	const struct counted *counted = asked->counted;

	report_svg(out, &counted->plot, &counted->takeoff,
		counted_name(asked->request->plots[0]), &asked->request->drawing);
}

/* Complains where the drawing cannot be made as asked. */
static bool is_drawable(const struct request *request, const struct counted *counted)
{
	struct text why = TEXT_EMPTY;
	bool is_good = svg_fits(&counted->plot, &counted->takeoff, &request->drawing, &why);

	if (!is_good)
		complain("%s", why.bytes);
	text_fini(&why);
	return is_good;
}

int command_drawing(int argc, char **argv)
{
	static const struct accepted accepted = { .plots = 1, .prices = true, .drawing = true };
	struct request request;

	return request_read(&request, argc, argv, &accepted) ?
		print_one(&request, print_drawing_sheet, is_drawable) : 2;
}

/* ---- Snags ----------------------------------------------------------------------------------- */

static void print_snags_alone(struct sink *out, const void *context)
{
	const struct asked *asked = context;
	const struct counted *counted = asked->counted;

	if (asked->request->kind == REPORT_JSON)
		report_snags_json(out, &counted->plot, &counted->takeoff);
	else
		report_snags(out, &counted->plot, &counted->takeoff,
			counted_name(asked->request->plots[0]));
}

int command_snags(int argc, char **argv)
{
	static const struct accepted accepted = { .plots = 1, .prices = true, .json = true };
	struct request request;
	struct counted counted;
	int status = 2;

	if (!request_read(&request, argc, argv, &accepted))
		return status;
	if (counted_read(&counted, request.plots[0], request.prices)) {
		status = print_counted(&request, &counted, print_snags_alone);
		if (status == 0 && counted.takeoff.snags.count > 0)
			status = 1;
	}
	counted_fini(&counted);
	return status;
}

/* ---- Compare --------------------------------------------------------------------------------- */

struct asked_comparison {
	const struct request *request;
	struct comparison *comparison;
};

static void print_comparison(struct sink *out, const void *context)
{
	const struct asked_comparison *asked = context;

	if (asked->request->kind == REPORT_JSON)
		compare_json(out, asked->comparison);
	else
		compare_text(out, asked->comparison);
}

static int compare(const struct request *request, const struct counted versions[static VERSIONS])
{
	struct arena arena = ARENA_EMPTY, words = ARENA_EMPTY;
	struct comparison comparison;
	struct compared compared[VERSIONS];
	const struct delivery_from old = { request->plots[OLD], versions[OLD].book_path, NULL };
	const struct delivery_from from = { request->plots[NEW], versions[NEW].book_path, &old };
	int status;

	for (int i = 0; i < VERSIONS; i++)
		compared[i] = (struct compared){ &versions[i].plot, &versions[i].takeoff,
			counted_name(request->plots[i]) };
	comparison_make(&comparison, &arena, &words, compared);
	status = output_print(request, &(struct file_content){ print_comparison,
		&(struct asked_comparison){ request, &comparison } }, &from);
	if (status == 0 && !compare_is_same(&comparison))
		status = 1;
	arena_clear(&words);
	arena_clear(&arena);
	return status;
}

int command_compare(int argc, char **argv)
{
	static const struct accepted accepted = { .plots = VERSIONS, .prices = true,
		.json = true };
	struct request request;
	struct counted versions[VERSIONS];
	int status = 2;

	if (!request_read(&request, argc, argv, &accepted))
		return status;
	if (counted_read(&versions[OLD], request.plots[OLD], request.prices)) {
		if (counted_read(&versions[NEW], request.plots[NEW], request.prices))
			status = compare(&request, versions);
		counted_fini(&versions[NEW]);
	}
	counted_fini(&versions[OLD]);
	return status;
}
