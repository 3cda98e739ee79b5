#include <ringfill/job/job.hpp>

#include <stdexcept>

namespace ringfill {

const Procedure& procedure_of(const Job& job, const WornBore& bore) {
    for (const Procedure& procedure : job.procedures)
        if (procedure.name == bore.procedure)
            return procedure;
    throw std::logic_error("a bore names a procedure that the job does not have");
}

} // namespace ringfill
