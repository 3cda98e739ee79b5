#pragma once

#include <sstream>
#include <string>

#include <boost/property_tree/xml_parser.hpp>

#include <ringfill/report/page/sheet.hpp>

#include "shop_for_tests.hpp"

namespace ringfill::testing {

/// The page of a plan whose job has this text.
inline std::string sheet_of(const std::string& job_text) {
    const Job job = job_from(job_text);
    return sheet(job, plan(job, shop()), shop().sources);
}

/// A page read by a strict reader of XML, which refuses what is not well-formed.
inline boost::property_tree::ptree parsed(const std::string& page) {
    std::istringstream stream(page);
    boost::property_tree::ptree tree;
    boost::property_tree::read_xml(stream, tree);
    return tree;
}

/// Calls `visit(name, node)` for every element of a page in its order.
template <class Visit>
void each_element(const boost::property_tree::ptree& node, Visit visit) {
    for (const auto& [name, child] : node) {
        if (name.starts_with("<"))
            continue; // attributes
        visit(name, child);
        each_element(child, visit);
    }
}

/// The text that stands directly in an element and in those within it, in their order but for text that is
/// parted by elements.
inline std::string text_in(const boost::property_tree::ptree& node) {
    std::string text = node.data();
    for (const auto& [name, child] : node)
        if (!name.starts_with("<"))
            text += text_in(child);
    return text;
}

} // namespace ringfill::testing
