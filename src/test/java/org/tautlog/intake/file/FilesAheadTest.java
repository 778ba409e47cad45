package org.tautlog.intake.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What follows from each file follows in the files' order, whoever is first. */
@Timeout(60)
class FilesAheadTest {
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5})
    void what_follows_comes_in_order_and_on_the_callers_thread(int threads) {
        var heard = new ArrayList<Integer>();
        var on = new HashSet<Thread>();
        var files = IntStream.range(0, 20)
                .mapToObj(file -> (FilesAhead.Work) turn -> {
                    for (int i = 0; i < 50; i++) {
                        int number = 50 * file + i;
                        turn.then(1, () -> {
                            heard.add(number);
                            on.add(Thread.currentThread());
                        });
                    }
                })
                .toList();
        FilesAhead.run(files, threads);
        assertEquals(IntStream.range(0, 1000).boxed().toList(), heard);
        assertEquals(Set.of(Thread.currentThread()), on);
    }

    @Test
    void a_file_that_others_are_before_waits_when_too_much_hangs_on_it() {
        var given = new AtomicInteger();
        var heard = new ArrayList<Boolean>();
        FilesAhead.Work slow = turn -> turn.then(1, () -> {
            sleepUntilStill(given);
            heard.add(given.get() < 20);
        });
        FilesAhead.Work much = turn -> {
            for (int i = 0; i < 100; i++) {
                turn.then(1 << 20, () -> {});
                given.incrementAndGet();
            }
        };
        FilesAhead.run(List.of(slow, much), 2);
        assertEquals(List.of(true), heard);
        assertEquals(100, given.get());
    }

    @Test
    void what_is_larger_than_all_the_room_has_it_for_itself() {
        var heard = new ArrayList<String>();
        FilesAhead.Work huge = turn -> {
            turn.then(Integer.MAX_VALUE, () -> heard.add("huge"));
            turn.then(Integer.MAX_VALUE, () -> heard.add("and another"));
        };
        FilesAhead.run(List.of(huge, huge), 2);
        assertEquals(List.of("huge", "and another", "huge", "and another"), heard);
    }

    @Test
    void a_failure_is_thrown_when_its_turn_comes_and_ends_the_others() throws InterruptedException {
        var heard = new ArrayList<String>();
        var begun = new CountDownLatch(1);
        var ended = new CountDownLatch(1);
        FilesAhead.Work good = turn -> turn.then(1, () -> heard.add("good"));
        FilesAhead.Work bad = turn -> {
            turn.then(1, () -> {
                heard.add("before");
                orFail(begun);
            });
            throw new IllegalStateException("broken");
        };
        FilesAhead.Work endless = turn -> {
            begun.countDown();
            try {
                while (true) {
                    turn.then(1 << 10, () -> heard.add("never"));
                }
            } finally {
                ended.countDown();
            }
        };
        var thrown = assertThrows(IllegalStateException.class, () -> FilesAhead.run(List.of(good, bad, endless), 3));
        assertEquals("broken", thrown.getMessage());
        assertEquals(List.of("good", "before"), heard);
        ended.await();
    }

    @Test
    void an_interruption_ends_the_reading_and_stays_known() throws InterruptedException {
        var ended = new CountDownLatch(1);
        FilesAhead.Work endless = turn -> {
            try {
                while (true) {
                    turn.then(1 << 10, () -> Thread.currentThread().interrupt());
                }
            } finally {
                ended.countDown();
            }
        };
        assertThrows(CancellationException.class, () -> FilesAhead.run(List.of(endless, endless), 2));
        assertTrue(Thread.interrupted());
        ended.await();
    }

    private static void orFail(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Until a count has stood still for a while: then whoever counts waits. */
    private static void sleepUntilStill(AtomicInteger count) {
        try {
            int before = -1;
            for (int still = 0; still < 20; still = count.get() == before && before > 0 ? still + 1 : 0) {
                before = count.get();
                Thread.sleep(5);
            }
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
