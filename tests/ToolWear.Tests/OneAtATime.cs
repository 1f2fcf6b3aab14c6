// forecasts use both cores already, and screens share process-wide settings of their library
[assembly: Xunit.v3.Parallelization(Mode = Xunit.Sdk.ParallelMode.None)]
