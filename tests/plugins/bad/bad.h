/* What the bad plugins share: all that they do right. Each file beside this one breaks one rule. */
#ifndef RINGFILL_TESTS_BAD_H
#define RINGFILL_TESTS_BAD_H

#include <ringfill/material/abi.h>

#define TEXT(words)                                                                                          \
    { words, sizeof(words) - 1 }

#define GOOD_TABLE                                                                                           \
    "{ \"format\": \"ringfill-family/1\", \"family\": \"bad\", \"description\": \"d\", \"has_rules\": true," \
    " \"bases\": { \"B1\": { \"standard\": \"s\", \"structure\": \"ferritic\","                              \
    " \"density_kg_m3\": [7850, \"practice\"], \"composition_pct\": { \"C\": [0.2, \"practice\"] } } } }"

#ifdef __cplusplus
extern "C" {
#endif
#ifdef __GNUC__
__attribute__((visibility("default")))
#endif
extern const rf_material_plugin ringfill_material_v1;
#ifdef __cplusplus
}
#endif

/* A plugin that is right but for the function it points to. */
#define PLUGIN_POINTING_TO(rule)                                                                             \
    const rf_material_plugin ringfill_material_v1 = {                                                        \
        (uint32_t)sizeof(rf_material_plugin), RF_MINOR, "bad", "1", TEXT(GOOD_TABLE), rule}

/* The same, the function being asked about preheat only. */
#define PLUGIN_WITH(rule)                                                                                    \
    static rf_status of_preheat(const rf_sink* sink, const rf_question* question) {                          \
        return is_preheat(question) ? rule(sink, question) : RF_UNSUPPORTED;                                 \
    }                                                                                                        \
    PLUGIN_POINTING_TO(of_preheat)

static inline int is_preheat(const rf_question* question) {
    return question->topic.size == 7 && question->topic.data[0] == 'p';
}

/* A method that is right: 100 degC. */
static inline rf_figure good_method(void) {
    static const rf_input inputs[] = {{TEXT("T"), 100, TEXT("degC")}};
    const rf_figure figure = {
        (uint32_t)sizeof(rf_figure), 0, TEXT("M"), 373.15, TEXT("T"), inputs, 1, TEXT("practice"), TEXT("")};
    return figure;
}

static inline rf_figure good_value(void) {
    rf_figure figure = good_method();
    const rf_text name = TEXT("CET_pct");
    figure.name = name;
    figure.number = 0.41;
    return figure;
}

/* Answers with one method and is done. */
static inline rf_status say_method(const rf_sink* sink, const rf_figure* figure) {
    sink->method(sink->context, figure);
    return RF_DONE;
}

/* Answers with one value and a good method. */
static inline rf_status say_value(const rf_sink* sink, const rf_figure* figure) {
    const rf_figure method = good_method();
    sink->value(sink->context, figure);
    return say_method(sink, &method);
}

#endif
