#include "report/command.h"
#include "base/complain.h"
#include "report/counted.h"
#include "report/json/json_sun.h"
#include "report/output.h"
#include "report/text/print_sun.h"
#include "report/words/sun_words.h"

struct asked {
	const struct request *request;
	const struct counted *counted;
	const struct date *days;
	int day_count;
};

static void print(struct sink *out, const void *context)
{
	const struct asked *asked = context;
	const struct counted *counted = asked->counted;

	if (asked->request->kind == REPORT_JSON)
		report_sun_json(out, &counted->plot, &counted->takeoff, asked->days,
			asked->day_count);
	else
		report_sun(out, &counted->plot, &counted->takeoff,
			counted_name(asked->request->plots[0]), asked->days, asked->day_count);
}

/* Of the days asked for, else of the usual ones. */
static int print_sun(const struct request *request, const struct counted *counted)
{
	struct date usual[SUN_USUAL_DAYS];
	struct asked asked = { request, counted, request->days, request->day_count };

	if (!sun_has_site(&counted->takeoff))
		return complain("%s: %s", counted_name(request->plots[0]), sun_missing_words());
	if (asked.day_count == 0) {
		sun_usual_days(sun_latitude(&counted->takeoff), usual);
		asked.days = usual;
		asked.day_count = SUN_USUAL_DAYS;
	}
	return output_print(request, &(struct file_content){ print, &asked },
		&(struct delivery_from){ request->plots[0], counted->book_path, NULL });
}

int command_sun(int argc, char **argv)
{
	static const struct accepted accepted = { .plots = 1, .prices = true, .json = true,
		.days = true };
	struct request request;
	struct counted counted;
	int status = 2;

	if (!request_read(&request, argc, argv, &accepted))
		return status;
	if (counted_read_for_sun(&counted, request.plots[0], request.prices))
		status = print_sun(&request, &counted);
	counted_fini(&counted);
	return status;
}
