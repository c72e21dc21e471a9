package bayfolio.prose;

/** What a link leads to, by its name; the address book knows where that is. */
public sealed interface Target {
    /** As a reference is written: {@code switch:pump-switch}. */
    String written();

    /** A thing of this coach or of the site. */
    record OfThing(String kind, String id) implements Target {
        @Override
        public String written() {
            return kind + ":" + id;
        }
    }

    /** When a thing is seen in a film. */
    record OfMoment(String film, String anchor) implements Target {
        @Override
        public String written() {
            return "film:" + film + "/" + anchor;
        }
    }

    record OfProcedure(String id) implements Target {
        @Override
        public String written() {
            return "procedure:" + id;
        }
    }

    /**
     * A later page of a procedure, or what stands below all its steps.
     *
     * @param anchor as the writer gave it, or the name of an ending
     */
    record OfPart(String procedure, String anchor) implements Target {
        @Override
        public String written() {
            return "procedure:" + procedure + "/" + anchor;
        }
    }

    record OfWord(String id) implements Target {
        @Override
        public String written() {
            return "word:" + id;
        }
    }

    record OfPage(String id) implements Target {
        @Override
        public String written() {
            return "page:" + id;
        }
    }

    record OfStage(String id) implements Target {
        @Override
        public String written() {
            return "stage:" + id;
        }
    }

    /** What is worked out in answer to a question, where all answers stand. */
    record OfReckoning(String question) implements Target {
        @Override
        public String written() {
            return "question:" + question;
        }
    }

    /** A number to call, by its name in the fleet file. */
    record OfPhone(String id, String number) implements Target {
        /**
         * As a phone dials it: {@code tel:+15550110}.
         *
         * @see <a href="https://www.rfc-editor.org/rfc/rfc3966">RFC 3966</a>
         */
        public String dialed() {
            return "tel:" + number.replaceAll("[^0-9+]", "");
        }

        @Override
        public String written() {
            return "phone:" + id;
        }
    }
}
