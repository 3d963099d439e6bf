#include "core/publish/word_script.h"

#include <dtl/dtl.hpp>

namespace nettare {

std::vector<ScriptWord> wordScript(const std::vector<std::string>& before,
                                   const std::vector<std::string>& after) {
    dtl::Diff<std::string> difference{before, after};
    difference.compose();
    std::vector<ScriptWord> script;
    for (const auto& [word, info] : difference.getSes().getSequence()) {
        const WordsKind kind = info.type == dtl::SES_DELETE ? WordsKind::Removed
                               : info.type == dtl::SES_ADD  ? WordsKind::Added
                                                            : WordsKind::Kept;
        script.push_back({kind, word});
    }
    return script;
}

}  // namespace nettare
