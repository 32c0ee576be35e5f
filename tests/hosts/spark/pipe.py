"""Sends calls through `ouncewise call --stream` as Spark's `pipe` does on a cluster, here in local mode.

usage: pipe.py CALLS_FILE RESULT_FOLDER PARTITIONS COMMAND
"""

import sys
import time

from pyspark.sql import SparkSession

calls, results, partitions, command = sys.argv[1], sys.argv[2], int(sys.argv[3]), sys.argv[4]
spark = (
    SparkSession.builder.master("local[2]")
    .appName("ouncewise-stream")
    .config("spark.ui.enabled", "false")
    .config("spark.driver.host", "localhost")
    .config("spark.driver.bindAddress", "127.0.0.1")
    .getOrCreate()
)
spark.sparkContext.setLogLevel("ERROR")
started = time.time()
spark.sparkContext.textFile(calls, partitions).pipe(command, checkCode=True).saveAsTextFile(results)
print("seconds %.1f" % (time.time() - started))
spark.stop()
