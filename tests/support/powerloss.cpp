// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/powerloss.h"

#include <algorithm>
#include <filesystem>

namespace slopebook::test {

namespace {
using Kind = DiskOp::Kind;
constexpr std::size_t sector = 512;

struct File {
    std::string durable;
    std::vector<const DiskOp*> waiting;
};

std::string folderOf(const std::string& name) {
    return std::filesystem::path(name).parent_path().string();
}

void put(std::string& content, std::size_t at, std::string_view bytes) {
    content.resize(std::max(content.size(), at + bytes.size()));
    content.replace(at, bytes.size(), bytes);
}

class Model {
public:
    explicit Model(const Recording& start) : m_names(start.names) {
        for (const auto& [file, content] : start.contents)
            m_files[file].durable = content;
    }

    void take(const DiskOp& op, Promise promise) {
        switch (op.kind) {
        case Kind::Write:
        case Kind::Truncate:
            m_files[op.file].waiting.push_back(&op);
            break;
        case Kind::SyncFile:
            if (promise != Promise::None)
                settle(m_files[op.file]);
            break;
        case Kind::SyncFolder:
            if (promise == Promise::All)
                settleFolder(op.name);
            break;
        case Kind::Create:
        case Kind::Unlink:
        case Kind::Rename:
            m_waiting.push_back(&op);
        }
    }

    std::map<std::string, std::string> lose(std::mt19937_64& random) {
        const bool inOrder = random() % 2 == 0;
        const std::size_t kept = random() % (m_waiting.size() + 1);
        for (std::size_t i = 0; i < m_waiting.size(); ++i)
            if (inOrder ? i < kept : random() % 2 == 0)
                name(*m_waiting[i]);
        std::map<std::string, std::string> left;
        for (const auto& [path, file] : m_names)
            left[path] = lose(m_files[file], random);
        return left;
    }

private:
    static void apply(std::string& content, const DiskOp& op) {
        if (op.kind == Kind::Truncate)
            content.resize(op.at);
        else
            put(content, op.at, op.bytes);
    }
    static void settle(File& file) {
        for (const DiskOp* op : file.waiting)
            apply(file.durable, *op);
        file.waiting.clear();
    }
    void settleFolder(const std::string& folder) {
        std::erase_if(m_waiting, [&](const DiskOp* op) {
            if (folderOf(op->name) != folder)
                return false;
            name(*op);
            return true;
        });
    }
    void name(const DiskOp& op) {
        if (op.kind == Kind::Create) {
            m_names[op.name] = op.file;
            return;
        }
        if (const auto held = m_names.find(op.name);
            held != m_names.end() && held->second == op.file)
            m_names.erase(held);
        if (op.kind == Kind::Rename)
            m_names[op.to] = op.file;
    }
    static std::string lose(const File& file, std::mt19937_64& random) {
        std::string content = file.durable;
        std::vector<const DiskOp*> order = file.waiting;
        if (random() % 2 == 0)
            std::ranges::shuffle(order, random);
        const unsigned share = 1 + static_cast<unsigned>(random() % 7); // of 8: how much is kept
        for (const DiskOp* op : order) {
            if (op->kind == Kind::Truncate) {
                if (random() % 8 < share)
                    content.resize(op->at);
                continue;
            }
            for (std::size_t from = 0; from < op->bytes.size(); from += sector)
                if (random() % 8 < share)
                    put(content, op->at + from, std::string_view(op->bytes).substr(from, sector));
        }
        return content;
    }

    std::map<int, File> m_files;
    std::map<std::string, int> m_names;
    std::vector<const DiskOp*> m_waiting;
};
} // namespace

std::map<std::string, std::string> afterLoss(const Recording& recording, std::size_t done,
                                             Promise promise, std::mt19937_64& random) {
    Model model(recording);
    for (std::size_t i = 0; i < done; ++i)
        model.take(recording.ops[i], promise);
    return model.lose(random);
}

} // namespace slopebook::test
