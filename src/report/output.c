#include "report/output.h"
#include "base/complain.h"
#include "base/memory.h"
#include "base/sink.h"
#include "base/temporary.h"

#include <errno.h>
#include <string.h>

static int print(const struct file_content *content)
{
	struct stream_sink out = stream_sink(stdout);

	content->print(&out.sink, content->context);
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

int output_print(const struct request *request, const struct file_content *content,
	const struct delivery_from *from)
{
	struct file_error error;

	if (!request->output || strcmp(request->output, "-") == 0)
		return print(content);
	temporary_guard();
	memory_on_exhaustion(give_up);
	switch (report_deliver(request->output, content, from, request->force, &error)) {
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
